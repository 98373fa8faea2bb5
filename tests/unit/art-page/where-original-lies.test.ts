import { describe, expect, it } from 'vitest';
import { type BeforeStep, whereOriginalLies } from '@/components/art-page/where-original-lies';
import { applyMend } from '@/lib/domain/art/mend/apply-mend';
import type { MendPicture } from '@/lib/domain/art/mend/mend-picture';
import { inkBoxOf } from '@/lib/domain/art/mend/mend-picture';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import { applyMatrix } from '@/lib/domain/geometry/matrix';

const [WIDTH, HEIGHT] = [13, 7];
/** The one red pixel, away from every line of symmetry. */
const MARK = { x: 4, y: 2 };

/** A clear picture with a black patch of ink and one red pixel in it. */
function markedPicture(): MendPicture {
  const rgba = new Uint8Array(WIDTH * HEIGHT * 4);
  for (let y = 1; y < 6; y += 1) for (let x = 2; x < 11; x += 1) rgba.set([0, 0, 0, 255], (y * WIDTH + x) * 4);
  rgba.set([255, 0, 0, 255], (MARK.y * WIDTH + MARK.x) * 4);
  return { rgba, widthPx: WIDTH, heightPx: HEIGHT };
}

function redPixel({ rgba, widthPx }: MendPicture): { x: number; y: number } {
  const at = rgba.findIndex((value, index) => index % 4 === 0 && value === 255 && rgba[index + 3] === 255);
  return { x: (at / 4) % widthPx, y: Math.floor(at / 4 / widthPx) };
}

const crop: MendStep = { mend: 'crop', box: { x: 3, y: 1, width: 8, height: 4 } };
const trim: MendStep = { mend: 'trim' };
const turns = ([1, 2, 3] as const).map((quarters): MendStep => ({ mend: 'turn', quarters }));
const recipes: MendStep[][] = [
  [],
  [crop],
  [trim],
  ...turns.map((turn) => [turn]),
  [trim, ...turns, crop],
  [...turns, trim],
];

describe('where the original lies in a mended picture', () => {
  it.each(recipes.map((steps) => [steps.map(({ mend }) => mend).join(', ') || 'no step', steps] as const))(
    'is where the pixels themselves went: %s',
    (_, steps) => {
      let picture = markedPicture();
      const befores: BeforeStep[] = [];
      for (const step of steps) {
        const inkBox = inkBoxOf(picture);
        if (!inkBox || step.mend === 'redraw') throw new Error('no ink');
        befores.push({ widthPx: picture.widthPx, heightPx: picture.heightPx, inkBox });
        const mended = applyMend(picture, step);
        if (!mended.ok) throw new Error(mended.reason);
        picture = mended.picture;
      }
      const place = whereOriginalLies(steps, befores);
      // The middle of a pixel goes to the middle of a pixel.
      const middle = place && applyMatrix(place, { x: MARK.x + 0.5, y: MARK.y + 0.5 });
      const red = redPixel(picture);
      expect(middle).toEqual({ x: red.x + 0.5, y: red.y + 0.5 });
    },
  );

  it('grows with a redrawing', () => {
    const redraw: MendStep = { mend: 'redraw', colours: ['#000000'], scale: 4 };
    const before = { widthPx: WIDTH, heightPx: HEIGHT, inkBox: { x: 2, y: 1, width: 9, height: 5 } };
    expect(whereOriginalLies([redraw], [before])).toEqual([4, 0, 0, 4, 0, 0]);
  });

  it('is not known while a picture in between is not', () => {
    expect(whereOriginalLies([trim], [null])).toBeNull();
  });
});
