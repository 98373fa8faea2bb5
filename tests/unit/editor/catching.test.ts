import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box } from '@/lib/domain/geometry/box';
import { placedPrint } from '@/lib/domain/layout/scene';
import { umFromInches } from '@/lib/domain/measure/length';
import { printInHand } from '@/lib/editor/chosen-print';
import { movePrint, setAcross, setDrop } from '@/lib/editor/commands/place-print';
import { alignmentsWith } from '@/lib/editor/neighbours';
import { caughtGuides, offersAt } from '@/lib/editor/snap-offers';
import { caughtUm, snappedUm, tradeSnap } from '@/lib/editor/snapping';
import { afterCommand, type TableEditor, tableState } from '@/lib/editor/table-editor';
import { ADULT_M, readingsOf, showing, tableWith } from './sample-table';

const um = fc.integer({ min: -500_000, max: 500_000 });

/** A tee with a full front in hand that stands alone, and one with two chest prints besides. */
const alone = tableWith(['fullFront']);
const crowded = tableWith(['centreChest', 'leftChest', 'rightChest']);

function boxInHand(editor: TableEditor): Box {
  const { print, flat } = printInHand(tableState(editor));
  return placedPrint(print, ADULT_M, flat).inkBox;
}

describe('what a drag is caught at', () => {
  it('is one of the offered readings or the nearest step, never further off than the catch or half a step', () => {
    fc.assert(
      fc.property(um, fc.array(um, { maxLength: 12 }), fc.integer({ min: 0, max: 20_000 }), (at, offered, catchUm) => {
        const snap = tradeSnap('in', catchUm);
        const settled = caughtUm(at, offered, snap);
        expect([...offered, snappedUm(at, snap)]).toContain(settled);
        expect(Math.abs(settled - at)).toBeLessThanOrEqual(Math.max(catchUm, 3_175 / 2));
        const nearest = Math.min(...offered.map((each) => Math.abs(each - at)));
        if (nearest <= catchUm) expect(Math.abs(settled - at)).toBe(nearest);
        expect(caughtUm(at, offered, null)).toBe(at);
      }),
    );
  });

  it('is offered to the print in hand, wherever it is dragged', () => {
    const mm = fc.double({ min: -150, max: 150, noNaN: true });
    fc.assert(
      fc.property(mm, mm, fc.integer({ min: 0, max: 12_000 }), (byXMm, byYMm, catchUm) => {
        const snap = tradeSnap('in', catchUm);
        const before = readingsOf(crowded);
        const to = { dropUm: before.dropUm + byYMm * 1_000, acrossUm: before.acrossUm + byXMm * 1_000 };
        const offers = offersAt(tableState(crowded), to);
        const after = readingsOf(afterCommand(crowded, movePrint, { byXMm, byYMm, snap }));
        for (const of of ['drop', 'across'] as const) {
          const [raw, settled] = of === 'drop' ? [to.dropUm, after.dropUm] : [to.acrossUm, after.acrossUm];
          const offered = offers.filter((offer) => offer.of === of).map((offer) => offer.um);
          expect([...offered, snappedUm(raw, snap)]).toContain(settled);
          expect(Math.abs(settled - raw)).toBeLessThanOrEqual(Math.max(catchUm, 3_175 / 2) + 1);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('a print that is dragged', () => {
  const snap = tradeSnap('in', 6_000);

  // Common practice, no source: a full front lies 3 in below the collar.
  it('is caught at its usual drop, with a line to show it', () => {
    const low = afterCommand(alone, setDrop, { dropUm: 80_000 });
    const caught = afterCommand(low, movePrint, { byXMm: 0, byYMm: -1, snap });
    expect(readingsOf(caught).dropUm).toBe(umFromInches(3));
    expect(caughtGuides(tableState(caught)).length).toBeGreaterThan(0);
    expect(caughtGuides(tableState(low))).toEqual([]);
  });

  it('is caught with its middle or an edge in line with those of another print', () => {
    const other = boxInHand(showing(crowded, ADULT_M, 'leftChest'));
    const mine = boxInHand(crowded);
    const byYMm = other.y - mine.y + 1.5;
    const caught = boxInHand(afterCommand(crowded, movePrint, { byXMm: 0, byYMm, snap: tradeSnap('in', 2_000) }));
    const lines = (box: Box) => [box.y, box.y + box.height / 2, box.y + box.height];
    const apart = lines(caught).map((line, index) => Math.abs(line - (lines(other)[index] ?? Number.NaN)));
    expect(Math.min(...apart)).toBeLessThan(0.002);
  });

  it('passes over prints that are hidden', () => {
    const of = (unseen: readonly string[]) => offersAt(tableState(crowded), { dropUm: 0, acrossUm: 0 }, unseen).length;
    expect(of(['leftChest', 'rightChest'])).toBeLessThan(of(['leftChest']));
    expect(of(['leftChest'])).toBeLessThan(of([]));
  });

  it('is caught by the centre line before anything as near', () => {
    const off = afterCommand(crowded, setAcross, { acrossUm: 4_000 });
    expect(readingsOf(afterCommand(off, movePrint, { byXMm: 0, byYMm: 0, snap })).acrossUm).toBe(0);
  });
});

describe('equal gaps', () => {
  const side = fc.integer({ min: 5, max: 120 });
  const rows = fc.record({ first: side, gap: side, second: side, mine: side });

  it('leave as much room after two prints, before them, and on both sides between them', () => {
    fc.assert(
      fc.property(rows, ({ first, gap, second, mine }) => {
        const before = { x: 0, y: 0, width: first, height: 50 };
        const after = { x: first + gap, y: 10, width: second, height: 50 };
        const box = { x: 400, y: 20, width: mine, height: 30 };
        const gaps = alignmentsWith(box, [after, before]).filter(({ axis, kind }) => axis === 'x' && kind === 'gap');
        const starts = gaps.map(({ atMm }) => atMm);
        expect(starts.some((start) => Math.abs(start - (after.x + after.width) - gap) < 1e-9)).toBe(true);
        expect(starts.some((start) => Math.abs(before.x - (start + mine) - gap) < 1e-9)).toBe(true);
        const between = starts.filter((start) => start > first && start + mine < after.x);
        expect(between.length).toBe(mine < gap ? 1 : 0);
        for (const start of between) expect(start - first).toBeCloseTo(after.x - (start + mine), 6);
      }),
    );
  });

  it('are taken only along a row or column that the print lies in', () => {
    const [above, below] = [
      { x: 0, y: 0, width: 40, height: 40 },
      { x: 0, y: 100, width: 40, height: 40 },
    ];
    const away = alignmentsWith({ x: 200, y: 300, width: 40, height: 40 }, [above, below]);
    expect(away.filter(({ kind }) => kind === 'gap')).toEqual([]);
  });
});
