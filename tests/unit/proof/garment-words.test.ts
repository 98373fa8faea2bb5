import { describe, expect, it } from 'vitest';
import { garmentWords } from '@/components/proof/garment-words';
import type { ViewGarment } from '@/lib/domain/revision/view';
import type { ViewFit } from '@/lib/domain/revision/view-fit';

const NBSP = '\u00a0';

function crest(widthUm: number): ViewGarment['sizes'][number]['sides'][number]['prints'][number] {
  return {
    printId: 'crest',
    groupId: String(widthUm),
    name: 'Crest',
    locationId: 'fullFront',
    reading: {
      widthUm,
      heightUm: widthUm / 2,
      dropUm: 76_200,
      measuredFrom: 'collarSeamCentre',
      edge: 'top',
      across: { towards: 'centre', um: 0 },
    },
  };
}

function size(label: string, quantity: number, widthUm: number): ViewGarment['sizes'][number] {
  return {
    blankId: 'adult',
    sizeId: label,
    ageBand: 'adult',
    label,
    quantity,
    chestUm: 508_000,
    sides: [
      { side: 'front', sceneSha256: `front-${label}`, prints: [crest(widthUm)] },
      { side: 'back', sceneSha256: `back-${label}`, prints: [] },
    ],
  };
}

function garment(sizes: ViewGarment['sizes']): ViewGarment {
  const cloth = { name: 'Navy', hex: '#20344F', heather: false };
  const total = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
  return { garmentId: 'tee', name: 'Relay tee', fabric: '', cloth, total, widthPx: 1, heightPx: 1, sizes };
}

function withFit(sizes: ViewGarment['sizes'], fits: readonly ViewFit[], fitNote: string): ViewGarment['sizes'] {
  return sizes.map((each, at) => ({
    ...each,
    sides: each.sides.map((side) => ({
      ...side,
      prints: side.prints.map((print) => ({ ...print, fitNote, fit: fits[at] })),
    })),
  }));
}

describe('the words of a garment', () => {
  it('name the second cloth in its title and in what its pictures show', () => {
    const navy = garment([size('M', 3, 254_000)]);
    const words = garmentWords({ ...navy, cloth: { ...navy.cloth, secondName: 'White' } }, 'en', 'in');
    expect(words.title).toBe('Relay tee, Navy with White sleeves and collar');
    expect(words.sides[0]?.pictures[0]?.alt).toMatch(/^Front of the Relay tee in Navy with White sleeves and collar, /);
  });

  it('puts sizes that read the same in one row, and says where they stand among the sizes', () => {
    const words = garmentWords(
      garment([size('S', 1, 254_000), size('M', 3, 254_000), size('L', 3, 279_400)]),
      'en',
      'in',
    );
    expect(words.sides[0]?.prints[0]?.rows.map(({ of, sizes, howBig }) => [of, sizes, howBig])).toEqual([
      ['0 1', 'S, M', `10${NBSP}in wide, 5${NBSP}in tall`],
      ['2', 'L', `11${NBSP}in wide, 5${NBSP}1/2${NBSP}in tall`],
    ]);
  });

  it('says all sizes where one reading serves them all', () => {
    const words = garmentWords(garment([size('S', 1, 254_000), size('M', 3, 254_000)]), 'en', 'in');
    expect(words.sides[0]?.prints[0]?.rows.map(({ sizes }) => sizes)).toEqual(['All sizes']);
  });

  it('starts with the size most are ordered of, the first of several', () => {
    const words = garmentWords(
      garment([size('S', 1, 254_000), size('M', 3, 254_000), size('L', 3, 254_000)]),
      'en',
      'in',
    );
    expect(words.shownFirst).toBe(1);
  });

  it('names print, place, size and colour for those who hear a picture, and says when a side is bare', () => {
    const [front, back] = garmentWords(garment([size('M', 3, 254_000)]), 'en', 'in').sides;
    expect(front?.pictures).toEqual([
      {
        size: 0,
        sceneSha256: 'front-M',
        alt: 'Front of the Relay tee in Navy, size M. Crest, full front: 10 in wide, 3 in below the collar, in the middle.',
        photograph: null,
      },
    ]);
    expect(back?.pictures[0]?.alt).toBe('Back of the Relay tee in Navy, size M. Nothing is printed here.');
    expect(back?.prints).toEqual([]);
  });

  it('offers the photograph of a side that has one, and says what it is', () => {
    const [front, back] = size('M', 3, 254_000).sides;
    if (!(front && back)) throw new Error('no sides');
    const photographed = { ...size('M', 3, 254_000), sides: [{ ...front, photographed: true as const }, back] };
    const words = garmentWords(garment([photographed, size('L', 1, 254_000)]), 'en', 'in');
    expect(words.sides.map(({ pictures }) => pictures.map(({ photograph }) => photograph?.file ?? null))).toEqual([
      ['photograph-front-M.webp', null],
      [null, null],
    ]);
    expect(words.sides[0]?.pictures[0]?.photograph?.alt).toMatch(/^On the shop’s photograph. Front of the Relay tee/);
    expect(words.photographs?.sentence).toBe(
      'A photograph of the shop’s own garment; sizes and distances are those of the drawing.',
    );
    expect(garmentWords(garment([size('M', 3, 254_000)]), 'en', 'in').photographs).toBeNull();
  });

  it('hangs up the sides that have a print, and names the print, its place and every size', () => {
    const { line } = garmentWords(garment([size('S', 1, 254_000), size('M', 3, 254_000)]), 'en', 'in');
    expect(line?.pictures.map(({ file, alt }) => [file, alt])).toEqual([
      [
        'line-front-tee.webp',
        'Front of the Relay tee in Navy, all sizes side by side at one scale: S and M. Crest, full front.',
      ],
    ]);
  });

  it('says on which sizes a print crosses a seam, and why the maker means it so', () => {
    const over: ViewFit = {
      nearest: { line: 'armhole', um: 0 },
      stops: [{ kind: 'crossesSeam', line: 'armhole' }],
    };
    const clear: ViewFit = { nearest: { line: 'armhole', um: 57_150 }, stops: [] };
    const sizes = [size('S', 1, 254_000), size('M', 3, 254_000)];
    const words = garmentWords(
      garment(withFit(sizes, [over, clear], 'The stripe runs from sleeve to sleeve.')),
      'en',
      'in',
    );
    const [print] = words.sides[0]?.prints ?? [];
    expect(print?.meant).toEqual({
      facts: ['On S the print runs over the sleeve seam.'],
      says: 'The maker says: The stripe runs from sleeve to sleeve.',
    });
    expect(print?.seams?.rows).toEqual([
      { of: '0', sizes: 'S', near: 'over the sleeve seam' },
      { of: '1', sizes: 'M', near: `2${NBSP}1/4${NBSP}in from the sleeve seam` },
    ]);
  });

  it('says nothing of seams where it was not kept how near they are', () => {
    const [print] = garmentWords(garment([size('M', 3, 254_000)]), 'en', 'in').sides[0]?.prints ?? [];
    expect(print).toMatchObject({ meant: null, seams: null });
  });

  it('speaks in the unit the revision was sealed with', () => {
    const words = garmentWords(garment([size('M', 3, 254_000)]), 'en', 'cm');
    expect(words.sizes[0]).toMatchObject({ chest: `50.8${NBSP}cm`, inFull: 'M, 50.8 cm across the chest' });
    expect(words.sides[0]?.prints[0]?.rows[0]?.where).toBe(`7.6${NBSP}cm below the collar, in the middle`);
  });
});
