import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { INK_ALPHA } from '@/lib/domain/art/ink';
import { applyMend } from '@/lib/domain/art/mend/apply-mend';
import { clearSpecks } from '@/lib/domain/art/mend/clear-specks';
import { crop } from '@/lib/domain/art/mend/crop';
import { squaredDistances } from '@/lib/domain/art/mend/distance';
import { dots } from '@/lib/domain/art/mend/dots';
import type { MendPicture } from '@/lib/domain/art/mend/mend-picture';
import { spotThreshold } from '@/lib/domain/art/mend/spot-ranks';
import { thicken } from '@/lib/domain/art/mend/thicken';
import { alphasOf, anyPicture, drawn, greysOf, hasImageMagick, magick, painted, pixelAt, pixelsOf } from './pictures';

const ink = [20, 60, 120] as const;
const solidOrClear = [
  [0, 0, 0, 0],
  [0, 0, 0, 0],
  [0, 0, 0, 0],
  [...ink, 255],
] as const;

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const area = (picture: MendPicture) => sum(alphasOf(picture)) / 255;

describe('distances', () => {
  it('are those that trying every pixel gives', () => {
    const weights = fc.array(fc.oneof(fc.constant(Number.POSITIVE_INFINITY), fc.integer({ min: 0, max: 9 })), {
      minLength: 35,
      maxLength: 35,
    });
    fc.assert(
      fc.property(weights, (values) => {
        const found = Float32Array.from(values);
        squaredDistances(found, 7, 5, 20);
        for (const [index, distance] of found.entries()) {
          const tried = values.map((weight, other) => {
            const [x, y] = [(index % 7) - (other % 7), Math.floor(index / 7) - Math.floor(other / 7)];
            return x * x + y * y + weight;
          });
          expect(distance).toBe(Math.min(...tried));
        }
      }),
    );
  });
});

describe('thickening', () => {
  it.skipIf(!hasImageMagick)('covers wholly what a disc of that radius does', () => {
    // ImageMagick: -morphology Dilate with the kernel Disk:r, all pixels with x² + y² ≤ r².
    const given = fc.tuple(anyPicture(solidOrClear, 9), fc.integer({ min: 1, max: 3 }));
    fc.assert(
      fc.property(given, ([picture, byPx]) => {
        fc.pre(alphasOf(picture).includes(255));
        const border = ['-bordercolor', 'black', '-border', `${byPx}`];
        const wanted = greysOf(magick(picture, [...border, '-morphology', 'Dilate', `Disk:${byPx}`]));
        const room = painted(picture.widthPx + 2 * byPx, picture.heightPx + 2 * byPx, (x, y) => {
          const isInside = x >= byPx && y >= byPx && x < byPx + picture.widthPx && y < byPx + picture.heightPx;
          return isInside ? pixelAt(picture, x - byPx, y - byPx) : [0, 0, 0, 0];
        });
        expect(alphasOf(thicken(room, byPx, ink)).map((alpha) => (alpha === 255 ? 255 : 0))).toEqual(wanted);
      }),
      { numRuns: 15 },
    );
  });

  it('moves a smooth edge as far as it says, whichever way it slants', async () => {
    // librsvg paints the line and the same line wider by twice as much on each side.
    for (const [degrees, byPx] of [
      [0, 1],
      [17, 1.5],
      [45, 2.25],
      [71, 0.5],
    ] as const) {
      const line = (width: number) =>
        drawn(
          200,
          `<path d="M20 50 H80" transform="rotate(${degrees} 50 50)" stroke-linecap="round" stroke="#143C78" stroke-width="${width / 2}"/>`,
        );
      const [thin, wide] = [await line(5), await line(5 + 2 * byPx)];
      const grown = thicken(thin, byPx, ink);
      // Mean error of the edge, px: what is wrong in area along both sides of 120 px and the ends.
      const wanted = alphasOf(wide);
      const off = alphasOf(grown).map((alpha, index) => Math.abs(alpha - (wanted[index] ?? 0)) / 255);
      expect(Math.abs(area(grown) - area(wide)) / 260).toBeLessThan(0.1);
      expect(sum(off) / 260).toBeLessThan(0.1);
    }
  });

  it('keeps every pixel that was there, gives what is new the one colour, and makes room at the sides', () => {
    const kinds = [...solidOrClear, [...ink, 130]] as const;
    fc.assert(
      fc.property(anyPicture(kinds), fc.double({ min: 0.25, max: 4, noNaN: true }), (picture, byPx) => {
        const mended = applyMend(picture, { mend: 'thicken', byPx });
        if (!mended.ok) return !alphasOf(picture).some((alpha) => alpha >= INK_ALPHA);
        expect(sum(alphasOf(mended.picture))).toBeGreaterThanOrEqual(sum(alphasOf(picture)));
        expect(mended.picture.widthPx - picture.widthPx).toBeLessThanOrEqual(2 * Math.ceil(byPx));
        return pixelsOf(mended.picture).every((pixel) => pixel[3] === 0 || pixel.slice(0, 3).join() === ink.join());
      }),
    );
    const corner = thicken(
      painted(3, 3, (x, y) => (x + y === 0 ? [...ink, 255] : [0, 0, 0, 0])),
      2,
      ink,
    );
    expect([corner.widthPx, corner.heightPx]).toEqual([5, 5]);
    expect(pixelAt(corner, 0, 2)).toEqual([...ink, 255]);
  });

  it('is refused for ink of several colours', () => {
    const two = painted(20, 20, (x) => (x < 10 ? [200, 0, 0, 255] : [0, 0, 200, 255]));
    expect(applyMend(two, { mend: 'thicken', byPx: 1 })).toEqual({ ok: false, reason: 'manyColours' });
  });
});

describe('clearing specks', () => {
  const faint = [...solidOrClear, [9, 9, 9, 3]] as const;

  it.skipIf(!hasImageMagick)('leaves as many pixels as pieces of at least that size have', () => {
    // ImageMagick: -connected-components 8 lists each piece with its size in pixels and its grey.
    const given = fc.tuple(anyPicture(solidOrClear, 14), fc.integer({ min: 1, max: 12 }));
    fc.assert(
      fc.property(given, ([picture, smallerThanPx]) => {
        const options = ['-define', 'connected-components:verbose=true', '-connected-components', '8'];
        const listed = magick(picture, options, 'null:').toString();
        const sizes = [...listed.matchAll(/ (\d+) \w*gray\(255\)/g)].map(([, size]) => Number(size));
        expect(sum(sizes)).toBe(alphasOf(picture).filter((alpha) => alpha === 255).length);
        const left = alphasOf(clearSpecks(picture, smallerThanPx)).filter((alpha) => alpha === 255).length;
        expect(left).toBe(sum(sizes.filter((size) => size >= smallerThanPx)));
      }),
      { numRuns: 15 },
    );
  });

  it('keeps every pixel of what stays, and a second time changes nothing', () => {
    fc.assert(
      fc.property(anyPicture(faint), fc.integer({ min: 1, max: 12 }), (picture, smallerThanPx) => {
        const cleared = clearSpecks(picture, smallerThanPx);
        expect(pixelsOf(clearSpecks(cleared, smallerThanPx))).toEqual(pixelsOf(cleared));
        const before = pixelsOf(picture);
        return pixelsOf(cleared).every(
          (pixel, index) => pixel[3] < INK_ALPHA || pixel.join() === before[index]?.join(),
        );
      }),
    );
  });
});

describe('fades as dots', () => {
  it('holds as much ink as the fade did, to one pixel, whatever the cell and its turn', () => {
    const fades = [
      [0, 0, 0, 0],
      [...ink, 40],
      [...ink, 128],
      [...ink, 200],
      [...ink, 247],
    ] as const;
    const cells = fc.double({ min: 2, max: 9, noNaN: true });
    fc.assert(
      fc.property(anyPicture(fades, 20), cells, fc.integer({ min: 0, max: 9_000 }), (picture, cellPx, turn) => {
        const dotted = dots(picture, cellPx, turn);
        expect(new Set(alphasOf(dotted)).size).toBeLessThanOrEqual(2);
        expect(alphasOf(dotted).every((alpha) => alpha === 0 || alpha === 255)).toBe(true);
        expect(Math.abs(area(dotted) - area(picture))).toBeLessThanOrEqual(0.5 + 1e-9);
      }),
    );
  });

  it('has round dots: the share of a cell that is solid at a coverage is that coverage', () => {
    const steps = Array.from({ length: 90 }, (_, index) => (index + 0.37) / 90);
    const thresholds = steps.flatMap((across) => steps.map((down) => spotThreshold(across, down)));
    for (const coverage of [0.05, 0.25, 0.5, 0.8, 0.95]) {
      const solid = thresholds.filter((threshold) => threshold < coverage).length / thresholds.length;
      expect(Math.abs(solid - coverage)).toBeLessThan(0.01);
    }
    const middle = spotThreshold(0, 0);
    expect([spotThreshold(0.1, 0), spotThreshold(0, 0.1), spotThreshold(0.08, 0.08)].every((at) => at > middle)).toBe(
      true,
    );
  });

  it('keeps the mean of a fade everywhere, and one dot to a cell', () => {
    const fade = painted(120, 120, (x) => [...ink, Math.round((x / 119) * 200) + 20]);
    const dotted = dots(fade, 8, 2_250);
    for (let left = 0; left + 24 <= 120; left += 24) {
      const strip = (picture: MendPicture) =>
        sum(
          pixelsOf(picture)
            .filter((_, index) => index % 120 >= left && index % 120 < left + 24)
            .map(([, , , alpha]) => alpha),
        );
      expect(Math.abs(strip(dotted) - strip(fade)) / (255 * 24 * 120)).toBeLessThan(0.02);
    }
    const flat = dots(
      painted(96, 96, () => [...ink, 64]),
      8,
      0,
    );
    const whole = crop(flat, { x: 4, y: 4, width: 88, height: 88 }) ?? flat;
    expect(area(clearSpecks(whole, 14))).toBe(area(whole));
    expect(area(clearSpecks(whole, 19))).toBe(0);
  });

  it('leaves solid ink, and makes the smooth edge of solid ink hard and not ragged', async () => {
    const disc = await drawn(80, '<circle cx="50" cy="50" r="30" fill="#143C78"/>');
    const dotted = alphasOf(dots(disc, 6, 2_250));
    expect(dotted).toEqual(alphasOf(disc).map((alpha) => (alpha >= 128 ? 255 : 0)));
  });
});
