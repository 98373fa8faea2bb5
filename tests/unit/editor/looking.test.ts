import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearanceBetween } from '@/lib/domain/geometry/clearance';
import { chainsOf } from '@/lib/domain/layout/flat-chains';
import { placedPrint } from '@/lib/domain/layout/scene';
import { umFromInches } from '@/lib/domain/measure/length';
import { printInHand } from '@/lib/editor/chosen-print';
import { setDrop } from '@/lib/editor/commands/place-print';
import { setWidth } from '@/lib/editor/commands/size-print';
import { areaAround } from '@/lib/editor/moving-area';
import { nearestSeam } from '@/lib/editor/nearest-seam';
import { paperFindings } from '@/lib/editor/paper-findings';
import { readDotsPerMm, realPxPerMm, WALLET_CARD_MM } from '@/lib/editor/real-size';
import { shownFlat } from '@/lib/editor/shown-flat';
import { afterCommand, shownLayout, type TableEditor, tableState } from '@/lib/editor/table-editor';
import { fittedViewport, mmAt, pxAt, zoomedViewport } from '@/lib/editor/viewport';
import { paperMarks, unitMm } from '@/lib/editor/yardstick';
import { LEAF } from '../layout/sample-layout';
import { ADULT_M, tableWith } from './sample-table';

const scales = fc.double({ min: 0.1, max: 12, noNaN: true });
const at = fc.double({ min: -2_000, max: 2_000, noNaN: true });

describe('what is pointed at on the paper', () => {
  it('is where it was pointed at, however close the garment is and wherever it was pushed', () => {
    fc.assert(
      fc.property(scales, at, at, at, at, (pxPerMm, xPx, yPx, x, y) => {
        const viewport = { pxPerMm, xPx, yPx };
        const there = pxAt(viewport, mmAt(viewport, { x, y }));
        expect(Math.hypot(there.x - x, there.y - y)).toBeLessThan(1e-6);
      }),
    );
  });

  it('stays whole in sight when a part of the garment is gone to', () => {
    const part = fc.record({
      x: at,
      y: at,
      width: fc.double({ min: 60, max: 900, noNaN: true }),
      height: fc.double({ min: 60, max: 900, noNaN: true }),
    });
    const [window, inset] = [
      { width: 1_440, height: 700 },
      { top: 50, right: 300, bottom: 20, left: 200 },
    ];
    fc.assert(
      fc.property(part, (box) => {
        const viewport = fittedViewport(box, window, inset);
        const first = pxAt(viewport, box);
        const last = pxAt(viewport, { x: box.x + box.width, y: box.y + box.height });
        expect(first.x).toBeGreaterThanOrEqual(inset.left - 1e-6);
        expect(first.y).toBeGreaterThanOrEqual(inset.top - 1e-6);
        expect(last.x).toBeLessThanOrEqual(window.width - inset.right + 1e-6);
        expect(last.y).toBeLessThanOrEqual(window.height - inset.bottom + 1e-6);
      }),
    );
  });
});

// ISO/IEC 7810, ID-1: a wallet card is 85.60 mm wide and 53.98 mm tall.
describe('real size', () => {
  it('draws a wallet card as large as it is, however large the browser shows its pages', () => {
    expect([WALLET_CARD_MM.width, WALLET_CARD_MM.height]).toEqual([85.6, 53.98]);
    const dots = fc.double({ min: 2, max: 30, noNaN: true });
    fc.assert(
      fc.property(dots, fc.constantFrom(0.5, 1, 1.25, 2, 3), (dotsPerMm, dotsPerPx) => {
        const cardPx = WALLET_CARD_MM.width * realPxPerMm(dotsPerMm, dotsPerPx);
        expect((cardPx * dotsPerPx) / dotsPerMm).toBeCloseTo(85.6, 9);
      }),
    );
  });

  it('is reached from any scale within what the paper is looked at', () => {
    const from = { pxPerMm: 0.8, xPx: 10, yPx: 20 };
    expect(zoomedViewport(from, 3.7795 / 0.8, { x: 300, y: 200 }).pxPerMm).toBeCloseTo(3.7795, 9);
  });

  it.each([
    [null, null],
    ['', null],
    ['wide', null],
    ['0', null],
    ['NaN', null],
    ['1e9', null],
    ['5.25', 5.25],
  ])('takes %j that was kept for %j', (kept, dots) => {
    expect(readDotsPerMm(kept)).toBe(dots);
  });
});

describe('pattern paper', () => {
  it('has its dots apart at every scale, and whole dots between two crosses', () => {
    fc.assert(
      fc.property(scales, fc.constantFrom('in' as const, 'cm'), (pxPerMm, unit) => {
        const { dotEvery, crossEvery } = paperMarks(unit, pxPerMm);
        expect(dotEvery * unitMm(unit) * pxPerMm).toBeGreaterThanOrEqual(8);
        expect(Number.isInteger(crossEvery / dotEvery)).toBe(true);
      }),
    );
  });

  it('has a dot at each inch and each centimetre as soon as there is room', () => {
    expect(paperMarks('in', 0.9)).toEqual({ dotEvery: 1, crossEvery: 5 });
    expect(paperMarks('cm', 0.9)).toEqual({ dotEvery: 1, crossEvery: 10 });
    expect(paperMarks('in', 0.1).dotEvery).toBeGreaterThan(1);
  });
});

function placedOn(editor: TableEditor) {
  const { print, flat } = printInHand(tableState(editor));
  return { placed: placedPrint(print, ADULT_M, flat), flat };
}

describe('the nearest seam', () => {
  it('is no further than any line of the flat that a press cannot cross', () => {
    fc.assert(
      fc.property(fc.integer({ min: -60_000, max: 400_000 }), (dropUm) => {
        const { placed, flat } = placedOn(afterCommand(tableWith(['fullFront']), setDrop, { dropUm }));
        const seam = nearestSeam(placed, flat);
        const ring = [...placed.inkOutline, ...placed.inkOutline.slice(0, 1)];
        const all = chainsOf(flat).lines.map(({ chain }) => clearanceBetween(ring, chain).distance);
        expect((seam?.um ?? Number.NaN) / 1_000).toBeCloseTo(Math.min(...all), 2);
      }),
      { numRuns: 20 },
    );
  });
});

describe('what is said of prints on the paper', () => {
  const findingsOn = (editor: TableEditor) => {
    const state = { layout: shownLayout(editor), selection: editor.selection };
    const shown = shownFlat(state);
    if (!(shown && editor.selection)) throw new Error('nothing on the table');
    return paperFindings(state.layout, editor.selection, shown);
  };

  it('is nothing of a sharp print in its usual place', () => {
    const art = { ...LEAF, widthPx: LEAF.widthPx * 10, heightPx: LEAF.heightPx * 10 };
    const inkBox = { ...LEAF.inkBox, width: LEAF.inkBox.width * 10, height: LEAF.inkBox.height * 10 };
    const inkHull = LEAF.inkHull.map(([x, y]): [number, number] => [x * 10, y * 10]);
    expect(findingsOn(tableWith(['leftChest'], 'in', { ...art, inkBox, inkHull }))).toEqual([]);
  });

  it('is said at the print: where it cannot be pressed, and that its picture is not sharp at its width', () => {
    const wide = afterCommand(tableWith(['fullFront']), setWidth, { widthUm: umFromInches(30) });
    const found = findingsOn(wide);
    expect(found.filter(({ of, stops }) => of === 'fit' && stops).length).toBe(1);
    expect(found.find(({ of }) => of === 'art')).toMatchObject({ printId: 'fullFront', sharpness: 'soft' });
    const { inkBox } = placedOn(wide).placed;
    for (const {
      at: { x, y },
    } of found) {
      expect(x).toBeGreaterThanOrEqual(inkBox.x - 1);
      expect(x).toBeLessThanOrEqual(inkBox.x + inkBox.width + 1);
      expect(y).toBeGreaterThanOrEqual(inkBox.y - 1);
      expect(y).toBeLessThanOrEqual(inkBox.y + inkBox.height + 1);
    }
  });
});

describe('the part of the paper that moves with a print', () => {
  it('holds all of what moves that is on the paper, and is never far larger', () => {
    const paper = { width: 1_440, height: 700 };
    const on = fc.record({
      x: fc.double({ min: -200, max: 900, noNaN: true }),
      y: fc.double({ min: -100, max: 700, noNaN: true }),
    });
    const viewport = { pxPerMm: 0.9, xPx: 300, yPx: 60 };
    fc.assert(
      fc.property(
        fc.array(on, { minLength: 1, maxLength: 9 }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (points, mm) => {
          const area = areaAround(points, mm, viewport, paper);
          const shown = points.map((point) => pxAt(viewport, point));
          const isIn = (at: number, most: number, from: number, length: number) =>
            at < 0 || at > most || (at >= from && at <= from + length);
          expect(shown.every(({ x }) => isIn(x, paper.width, area.x, area.width))).toBe(true);
          expect(shown.every(({ y }) => isIn(y, paper.height, area.y, area.height))).toBe(true);
          const spread = Math.max(...shown.map(({ x }) => x)) - Math.min(...shown.map(({ x }) => x));
          expect(area.width).toBeLessThanOrEqual(spread + 2 * (mm * 0.9 + 3) + 2 + 64);
        },
      ),
    );
  });
});
