import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readingPlace } from '@/lib/editor/reading-place';
import { fittedViewport, mmAt, pannedViewport, pxAt, zoomedViewport } from '@/lib/editor/viewport';
import { unitMm, yardstickTicks } from '@/lib/editor/yardstick';

const coordinate = fc.double({ min: -2_000, max: 2_000, noNaN: true });
const points = fc.record({ x: coordinate, y: coordinate });
const viewports = fc.record({
  pxPerMm: fc.double({ min: 0.1, max: 12, noNaN: true }),
  xPx: coordinate,
  yPx: coordinate,
});

describe('the paper', () => {
  it('shows a point of the garment where it can be pointed at', () => {
    fc.assert(
      fc.property(viewports, points, (viewport, point) => {
        const there = mmAt(viewport, pxAt(viewport, point));
        expect(Math.hypot(there.x - point.x, there.y - point.y)).toBeLessThan(1e-6);
      }),
    );
  });

  it('keeps the point under the pointer when it comes closer', () => {
    fc.assert(
      fc.property(viewports, points, fc.double({ min: 0.2, max: 5, noNaN: true }), (viewport, atPx, factor) => {
        const [before, after] = [mmAt(viewport, atPx), mmAt(zoomedViewport(viewport, factor, atPx), atPx)];
        expect(Math.hypot(after.x - before.x, after.y - before.y)).toBeLessThan(1e-6);
      }),
    );
  });

  it('shows the whole garment, in the middle of what nothing covers', () => {
    const box = { x: -400, y: -20, width: 800, height: 740 };
    const inset = { top: 40, right: 320, bottom: 20, left: 60 };
    const viewport = fittedViewport(box, { width: 1440, height: 700 }, inset);
    const [topLeft, bottomRight] = [pxAt(viewport, { x: -400, y: -20 }), pxAt(viewport, { x: 400, y: 720 })];
    expect((topLeft.y + bottomRight.y) / 2).toBeCloseTo((40 + 680) / 2, 6);
    expect((topLeft.x + bottomRight.x) / 2).toBeCloseTo((60 + 1120) / 2, 6);
    expect(topLeft.y).toBeGreaterThanOrEqual(40 - 1e-9);
    expect(bottomRight.y).toBeLessThanOrEqual(680 + 1e-9);
  });

  it('moves with the hand', () => {
    expect(pannedViewport({ pxPerMm: 1, xPx: 5, yPx: 6 }, { x: 10, y: -10 })).toEqual({ pxPerMm: 1, xPx: 15, yPx: -4 });
  });
});

describe('the yardstick', () => {
  // 1 in = 25.4 mm exactly (NIST SP 811, Appendix B).
  it.each([
    ['in', 25.4],
    ['cm', 10],
  ] as const)('has a whole mark at every %s from zero, on the millimetre', (unit, mm) => {
    expect(unitMm(unit)).toBe(mm);
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 12, noNaN: true }),
        fc.integer({ min: -500, max: 1_500 }),
        (pxPerMm, zeroPx) => {
          const ticks = yardstickTicks(unit, pxPerMm, zeroPx, 1_000);
          const whole = ticks.filter(({ rank }) => rank === 'whole');
          const counts = whole.map(({ atPx }) => (atPx - zeroPx) / (mm * pxPerMm));
          for (const [index, count] of counts.entries()) expect(count).toBeCloseTo((counts[0] ?? 0) + index, 6);
          expect(Math.abs((counts[0] ?? 0) - Math.round(counts[0] ?? 0))).toBeLessThan(1e-6);
          expect(Math.abs(whole.length - 1_000 / (mm * pxPerMm))).toBeLessThanOrEqual(1 + 1e-6);
          for (const { atPx, number } of whole) {
            if (number !== null) expect(atPx).toBeCloseTo(zeroPx + number * mm * pxPerMm, 6);
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  it('cuts as finely as there is room for', () => {
    const ranks = (pxPerMm: number) => new Set(yardstickTicks('in', pxPerMm, 0, 200).map(({ rank }) => rank));
    expect(ranks(4)).toEqual(new Set(['whole', 'half', 'quarter', 'fine']));
    expect(ranks(0.6)).toEqual(new Set(['whole', 'half', 'quarter']));
    expect(ranks(0.2)).toEqual(new Set(['whole']));
  });
});

describe('a tape’s card', () => {
  const viewport = { pxPerMm: 1, xPx: 0, yPx: 0 };
  const card = { width: 60, height: 30 };

  it('lies across the middle of a long tape', () => {
    expect(readingPlace({ from: { x: 0, y: 0 }, to: { x: 0, y: 80 } }, viewport, card, 20)).toEqual({ x: 0, y: 40 });
  });

  it('stands beside a short upright one, to the outside, and under a short level one', () => {
    expect(readingPlace({ from: { x: -9, y: 0 }, to: { x: -9, y: 20 } }, viewport, card, 20).x).toBe(-9 - 10 - 6 - 30);
    expect(readingPlace({ from: { x: 0, y: 5 }, to: { x: 50, y: 5 } }, viewport, card, 20).y).toBe(5 + 10 + 6 + 15);
  });

  it('stands at the outer end of a short level one where there is no room under it', () => {
    const short = { from: { x: -50, y: 5 }, to: { x: 0, y: 5 } };
    expect(readingPlace(short, viewport, card, 20, { isRoomUnder: false })).toEqual({ x: -50 - 6 - 30, y: 5 });
  });

  it('keeps clear of a corner to press beside a short tape', () => {
    const short = { from: { x: 0, y: 0 }, to: { x: 0, y: 20 } };
    const at = (corner: { x: number; y: number }) =>
      readingPlace(short, viewport, card, 20, { corners: [{ x: -20, y: corner.y }, corner] });
    // Lifted just above it, or, where that would be too far from the tape, set beyond it.
    expect(at({ x: 20, y: 22 })).toEqual({ x: 10 + 6 + 30, y: 22 - 16 - 15 });
    expect(at({ x: 20, y: 4 })).toEqual({ x: 20 + 16 + 30, y: 10 });
    expect(readingPlace(short, viewport, card, 20, { corners: [{ x: 20, y: 90 }] })).toEqual({ x: 10 + 6 + 30, y: 10 });
  });
});
