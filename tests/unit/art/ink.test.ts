import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { INK_ALPHA, inkOfPixels, MOST_HULL_CORNERS, withFewCorners } from '@/lib/domain/art/ink';
import { convexHull } from '@/lib/domain/geometry/hull';

type Picture = { widthPx: number; heightPx: number; rgba: Uint8Array };

function picture(widthPx: number, heightPx: number, alphaAt: (x: number, y: number) => number): Picture {
  const rgba = new Uint8Array(widthPx * heightPx * 4);
  for (let y = 0; y < heightPx; y += 1) {
    for (let x = 0; x < widthPx; x += 1) rgba[(y * widthPx + x) * 4 + 3] = alphaAt(x, y);
  }
  return { widthPx, heightPx, rgba };
}

const inkOf = ({ rgba, widthPx, heightPx }: Picture) => inkOfPixels(rgba, widthPx, heightPx);

const anyPicture = fc
  .record({ widthPx: fc.integer({ min: 1, max: 14 }), heightPx: fc.integer({ min: 1, max: 14 }) })
  .chain(({ widthPx, heightPx }) =>
    fc
      .array(fc.constantFrom(0, 0, INK_ALPHA - 1, INK_ALPHA, 255), {
        minLength: widthPx * heightPx,
        maxLength: widthPx * heightPx,
      })
      .map((alphas) => picture(widthPx, heightPx, (x, y) => alphas[y * widthPx + x] ?? 0)),
  );

function inkPixels({ rgba, widthPx, heightPx }: Picture): { x: number; y: number }[] {
  return Array.from({ length: widthPx * heightPx }, (_, index) => index)
    .filter((index) => (rgba[index * 4 + 3] ?? 0) >= INK_ALPHA)
    .map((index) => ({ x: index % widthPx, y: Math.floor(index / widthPx) }));
}

describe('the ink of a picture', () => {
  it('has the box and hull that looking at every pixel gives', () => {
    fc.assert(
      fc.property(anyPicture, (any) => {
        const pixels = inkPixels(any);
        const ink = inkOf(any);
        if (pixels.length === 0) {
          expect(ink).toBeNull();
          return;
        }
        const corners = pixels.flatMap(({ x, y }) =>
          [0, 1].flatMap((dx) => [0, 1].map((dy) => ({ x: x + dx, y: y + dy }))),
        );
        const xs = corners.map(({ x }) => x);
        const ys = corners.map(({ y }) => y);
        const [left, top] = [Math.min(...xs), Math.min(...ys)];
        expect(ink?.inkBox).toEqual({ x: left, y: top, width: Math.max(...xs) - left, height: Math.max(...ys) - top });
        expect(ink?.inkHull).toEqual(convexHull(corners).map(({ x, y }) => [x, y]));
        expect(ink?.anyClear).toBe(pixels.length < any.widthPx * any.heightPx);
      }),
    );
  });

  it('is found down to a single hairline and a single dot, wherever they are', () => {
    const speck = picture(300, 200, (x, y) => (x === 299 && y === 0 ? INK_ALPHA : 0));
    expect(inkOf(speck)?.inkBox).toEqual({ x: 299, y: 0, width: 1, height: 1 });
    const hairline = picture(300, 200, (_, y) => (y === 120 ? 255 : 0));
    expect(inkOf(hairline)?.inkBox).toEqual({ x: 0, y: 120, width: 300, height: 1 });
  });

  it('takes no notice of pixels too clear to be seen', () => {
    expect(inkOf(picture(20, 20, () => INK_ALPHA - 1))).toBeNull();
  });

  it('keeps the hull of a large round picture to few corners, and the box as it is', () => {
    const radius = 900;
    const disc = picture(2 * radius, 2 * radius, (x, y) =>
      Math.hypot(x + 0.5 - radius, y + 0.5 - radius) <= radius ? 255 : 0,
    );
    const ink = inkOf(disc);
    expect(ink?.inkHull.length).toBeLessThanOrEqual(MOST_HULL_CORNERS);
    expect(ink?.inkBox).toEqual({ x: 0, y: 0, width: 2 * radius, height: 2 * radius });
  });

  it('loses less than a pixel when a hull is cut to few corners', () => {
    // A circle of 4 500 px radius: larger than any picture that is taken in.
    const round = Array.from({ length: 3_000 }, (_, index) => ({
      x: Math.round(4_500 * Math.cos((index / 3_000) * 2 * Math.PI)),
      y: Math.round(4_500 * Math.sin((index / 3_000) * 2 * Math.PI)),
    }));
    const whole = convexHull(round);
    const few = withFewCorners(whole, MOST_HULL_CORNERS);
    expect(whole.length).toBeGreaterThan(MOST_HULL_CORNERS);
    expect(few.length).toBeLessThanOrEqual(MOST_HULL_CORNERS);
    for (let degree = 0; degree < 360; degree += 1) {
      const [cos, sin] = [Math.cos((degree * Math.PI) / 180), Math.sin((degree * Math.PI) / 180)];
      const reach = (hull: typeof whole) => Math.max(...hull.map(({ x, y }) => x * cos + y * sin));
      expect(reach(whole) - reach(few)).toBeLessThan(1);
    }
  });

  it('refuses pixels that do not make up the picture', () => {
    expect(() => inkOfPixels(new Uint8Array(12), 2, 2)).toThrow(/12 bytes for 2 × 2/);
  });
});
