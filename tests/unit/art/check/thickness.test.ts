import { describe, expect, it } from 'vitest';
import { factsOf, inBand, painted } from './painted';

const NAVY = [27, 42, 74] as const;
const WHITE = [255, 255, 255] as const;

describe('how thick strokes are', () => {
  it.each([
    [1.5, 0.3],
    [3, 0],
    [6.4, 0.5],
    [6.4, Math.PI / 4],
    [17, 1.2],
  ])('is known within a pixel of a bar %f px wide at %f', (width, angle) => {
    const bar = painted(160, 160, (x, y) => (inBand(x, y, [80, 80], angle, width) ? NAVY : null));
    expect(Math.abs((factsOf(bar).strokes.thinnestPx ?? 0) - width)).toBeLessThan(1);
  });

  it('is known as well where the bar lies on paper', () => {
    const bar = painted(160, 160, (x, y) =>
      Math.hypot(x - 80, y - 80) < 70 && inBand(x, y, [80, 80], 0.5, 6.4) ? NAVY : WHITE,
    );
    expect(Math.abs((factsOf(bar).strokes.thinnestPx ?? 0) - 6.4)).toBeLessThan(1);
  });

  it('follows a line round a curve', () => {
    const ring = painted(160, 160, (x, y) => (Math.abs(Math.hypot(x - 80, y - 80) - 60) < 2.5 ? NAVY : null));
    expect(Math.abs((factsOf(ring).strokes.thinnestPx ?? 0) - 5)).toBeLessThan(1);
  });

  it('is known of a frame that runs along the edges of the ink', () => {
    const frame = painted(160, 120, (x, y) =>
      x > 10 && y > 10 && x < 150 && y < 110 && !(x > 12 && y > 12 && x < 148 && y < 108) ? NAVY : null,
    );
    expect(Math.abs((factsOf(frame).strokes.thinnestPx ?? 0) - 2)).toBeLessThan(1);
    expect(factsOf(frame).strokes.spots.length).toBeGreaterThan(8);
  });

  it('is not told of corners and tips, which are thin for a moment only', () => {
    const tips = painted(200, 200, (x, y) => (y > 20 && y < 190 && Math.abs(x - 100) < (y - 20) * 0.4 ? NAVY : null));
    expect(factsOf(tips).strokes).toEqual({ thinnestPx: null, spots: [] });
  });

  it('is marked where the thin place is', () => {
    const part = painted(200, 120, (x, y) =>
      (x < 80 && y > 20 && y < 100) || (x >= 80 && x < 180 && Math.abs(y - 60) < 2) ? NAVY : null,
    );
    const [spot] = factsOf(part).strokes.spots;
    expect(spot?.x).toBeGreaterThan(70);
    expect(spot && spot.y <= 60 && spot.y + spot.height >= 60).toBe(true);
  });
});

describe('the room between strokes', () => {
  it.each([1, 4, 11.5])('is known within a pixel when it is %f px wide', (gap) => {
    const slabs = painted(160, 160, (x, y) =>
      y > 10 && y < 150 && x > 10 && x < 150 && Math.abs(x - 80.3) > gap / 2 ? NAVY : null,
    );
    expect(Math.abs((factsOf(slabs).gaps.thinnestPx ?? 0) - gap)).toBeLessThan(1);
  });

  it('is nothing where no other stroke lies across', () => {
    const disc = painted(160, 160, (x, y) => (Math.hypot(x - 80, y - 80) < 50 ? NAVY : null));
    expect(factsOf(disc).gaps).toEqual({ thinnestPx: null, spots: [] });
  });
});
