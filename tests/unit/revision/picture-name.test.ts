import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SIDES } from '@/lib/domain/garment/flat';
import { type PictureName, pictureFileName, readPictureFileName } from '@/lib/domain/revision/picture-name';

const names = fc.oneof<fc.Arbitrary<PictureName>[]>(
  fc.record({
    kind: fc.constantFrom('scene' as const, 'photograph' as const),
    sha256: fc.stringMatching(/^[0-9a-f]{64}$/),
  }),
  fc.record({
    kind: fc.constant('line' as const),
    garmentId: fc.string({ minLength: 1, maxLength: 64, unit: 'grapheme-ascii' }),
    side: fc.constantFrom(...SIDES),
  }),
);

describe('the name of a picture', () => {
  it('is read back from its address as it was', () => {
    fc.assert(
      fc.property(names, (name) => {
        const file = pictureFileName(name);
        expect(file).toMatch(/^[^/?#\s]+$/);
        expect(readPictureFileName(decodeURIComponent(file))).toEqual(name);
      }),
    );
  });

  it('is nothing for what is not the name of a picture', () => {
    for (const file of [
      '',
      '0.webp',
      `${'0'.repeat(64)}.png`,
      'photograph-.webp',
      'line-.webp',
      'line-inside-tee.webp',
      'line-front-.webp',
    ])
      expect(readPictureFileName(file)).toBeNull();
  });
});
