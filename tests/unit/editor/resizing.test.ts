import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inkHeightUm } from '@/lib/domain/layout/placement';
import { placedPrint } from '@/lib/domain/layout/scene';
import { umFromInches } from '@/lib/domain/measure/length';
import { printInHand } from '@/lib/editor/chosen-print';
import { setTurn } from '@/lib/editor/commands/change-print';
import { movePrint } from '@/lib/editor/commands/place-print';
import { resizePrint, setHeight, setWidth } from '@/lib/editor/commands/size-print';
import { FRAME_CORNERS, frameCorners, oppositeCorner } from '@/lib/editor/print-frame';
import { tradeSnap } from '@/lib/editor/snapping';
import { afterCommand, type TableEditor, tableState } from '@/lib/editor/table-editor';
import { LEAF } from '../layout/sample-layout';
import { ADULT_M, readingsOf, tableWith } from './sample-table';

const drags = fc.record({
  corner: fc.constantFrom(...FRAME_CORNERS),
  x: fc.double({ min: -60, max: 60, noNaN: true }),
  y: fc.double({ min: -60, max: 60, noNaN: true }),
});
const snap = tradeSnap('in', 0);

function placedOn(editor: TableEditor) {
  const { print, flat } = printInHand(tableState(editor));
  return placedPrint(print, ADULT_M, flat);
}

function corners(editor: TableEditor) {
  return frameCorners(LEAF.inkBox, placedOn(editor).matrix);
}

/** The table after a corner was dragged by so many millimetres. */
function dragged(
  editor: TableEditor,
  { corner, x, y }: typeof drags extends fc.Arbitrary<infer V> ? V : never,
  snapping: typeof snap,
) {
  const from = corners(editor)[corner];
  return afterCommand(editor, resizePrint, { corner, toMm: { x: from.x + x, y: from.y + y }, snap: snapping });
}

describe('dragging a corner', () => {
  it('keeps a print on the centre line centred, its far edge where it was', () => {
    const table = tableWith(['fullFront']);
    const before = placedOn(table).inkBox;
    fc.assert(
      fc.property(drags, (drag) => {
        const resized = dragged(table, drag, null);
        const after = placedOn(resized).inkBox;
        expect(readingsOf(resized).acrossUm).toBe(0);
        const isTop = drag.corner.startsWith('top');
        const edge = (box: typeof before) => (isTop ? box.y + box.height : box.y);
        expect(Math.abs(edge(after) - edge(before))).toBeLessThan(0.002);
      }),
    );
  });

  it('keeps the corner across where it was when the print is off the centre line, turned or not', () => {
    fc.assert(
      fc.property(drags, fc.integer({ min: -18_000, max: 18_000 }), (drag, turnCentideg) => {
        const off = afterCommand(tableWith(['fullFront']), movePrint, { byXMm: 40, byYMm: 10, snap: null });
        const table = afterCommand(off, setTurn, { turnCentideg });
        const across = oppositeCorner(drag.corner);
        const [before, after] = [corners(table)[across], corners(dragged(table, drag, null))[across]];
        expect(Math.hypot(after.x - before.x, after.y - before.y)).toBeLessThan(0.004);
      }),
    );
  });

  it('keeps a chest print’s middle, drop and across', () => {
    const table = tableWith(['leftChest']);
    fc.assert(
      fc.property(drags, (drag) => {
        const { dropUm, acrossUm } = readingsOf(dragged(table, drag, snap));
        expect({ dropUm, acrossUm }).toEqual({ dropUm: umFromInches(8), acrossUm: umFromInches(4) });
      }),
    );
  });

  it('follows the pointer along the frame’s diagonal', () => {
    const table = tableWith(['leftChest']);
    const { inkBox } = placedOn(table);
    // A tenth of the way out from the middle, both ways: the print is a tenth larger.
    const drag = { corner: 'bottomRight', x: inkBox.width / 20, y: inkBox.height / 20 } as const;
    expect(readingsOf(dragged(table, drag, null)).widthUm).toBe(Math.round(readingsOf(table).widthUm * 1.1));
  });

  it('settles width, drop and across on the trade step', () => {
    const table = afterCommand(tableWith(['fullFront']), movePrint, { byXMm: 25.4, byYMm: 0, snap });
    fc.assert(
      fc.property(drags, (drag) => {
        const { widthUm, dropUm, acrossUm } = readingsOf(dragged(table, drag, snap));
        expect([widthUm, dropUm, acrossUm].map((um) => Math.abs(um % 3_175))).toEqual([0, 0, 0]);
      }),
    );
  });

  it('never turns a print inside out', () => {
    const resized = dragged(tableWith(['fullFront']), { corner: 'bottomRight', x: -900, y: -900 }, snap);
    expect(readingsOf(resized).widthUm).toBe(umFromInches(1 / 4));
  });
});

describe('typing a size', () => {
  it('keeps the ink’s proportions, whichever of the two is typed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10_000, max: 400_000 }), (um) => {
        const table = tableWith(['fullFront']);
        const wide = readingsOf(afterCommand(table, setWidth, { widthUm: um })).widthUm;
        const tall = readingsOf(afterCommand(table, setHeight, { heightUm: um })).widthUm;
        expect(wide).toBe(um);
        // The leaf's ink is 600 × 500 px.
        expect(Math.abs(tall - um * 1.2)).toBeLessThanOrEqual(0.5);
        expect(Math.abs(inkHeightUm(LEAF, tall) - um)).toBeLessThanOrEqual(1);
      }),
    );
  });
});
