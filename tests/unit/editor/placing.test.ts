import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupFor } from '@/lib/domain/layout/sizes';
import { umFromInches } from '@/lib/domain/measure/length';
import { printInHand } from '@/lib/editor/chosen-print';
import { setLocation, setTurn } from '@/lib/editor/commands/change-print';
import { centrePrint, movePrint, nudgePrint, setAcross, setDrop } from '@/lib/editor/commands/place-print';
import { tradeSnap } from '@/lib/editor/snapping';
import { afterCommand, afterDrag, afterUndo, tableState, whileDragging } from '@/lib/editor/table-editor';
import { ADULT_M, readingsOf, showing, tableWith, YOUTH_M } from './sample-table';

const inches = (value: number) => umFromInches(value);
const front = tableWith(['fullFront']);
const noCatch = tradeSnap('in', 0);

// Common practice, no source: the trade works in steps of 1/8 in, or 2 mm where it thinks in centimetres.
describe('dragging a print', () => {
  it('settles drop and across on the trade step', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -200, max: 200, noNaN: true }),
        fc.double({ min: -200, max: 200, noNaN: true }),
        (byXMm, byYMm) => {
          const moved = readingsOf(afterCommand(front, movePrint, { byXMm, byYMm, snap: noCatch }));
          expect(Math.abs(moved.dropUm % 3_175) + Math.abs(moved.acrossUm % 3_175)).toBe(0);
          expect(Math.abs(moved.dropUm - (inches(3) + byYMm * 1000))).toBeLessThanOrEqual(3_175 / 2 + 1);
          expect(Math.abs(moved.acrossUm - byXMm * 1000)).toBeLessThanOrEqual(3_175 / 2 + 1);
        },
      ),
    );
  });

  it('settles nowhere while Alt is held', () => {
    const moved = afterCommand(front, movePrint, { byXMm: 12.3456, byYMm: -7.0004, snap: null });
    expect(readingsOf(moved)).toMatchObject({ acrossUm: 12_346, dropUm: inches(3) - 7_000 });
  });

  it('catches the centre line when let go close to it', () => {
    const snap = tradeSnap('in', 6_000);
    expect(readingsOf(afterCommand(front, movePrint, { byXMm: -5.9, byYMm: 0, snap })).acrossUm).toBe(0);
    expect(readingsOf(afterCommand(front, movePrint, { byXMm: -6.4, byYMm: 0, snap })).acrossUm).toBe(-inches(1 / 4));
  });

  it('goes to the wearer’s left when dragged to the viewer’s right on the front, and to the right on the back', () => {
    const drag = { byXMm: 50.8, byYMm: 0, snap: noCatch };
    expect(readingsOf(afterCommand(front, movePrint, drag)).acrossUm).toBe(inches(2));
    expect(readingsOf(afterCommand(tableWith(['fullBack']), movePrint, drag)).acrossUm).toBe(-inches(2));
  });

  it('is one step to undo, however long it took', () => {
    const held = [1, 2, 3].reduce(
      (editor, step) => whileDragging(editor, movePrint, { byXMm: step * 10, byYMm: 0, snap: null }),
      front,
    );
    const dropped = afterDrag(held, 'movePrint');
    expect(readingsOf(dropped).acrossUm).toBe(30_000);
    expect(afterUndo(dropped).history.present).toBe(front.history.present);
  });

  it('leaves no step when it ends where it began', () => {
    const away = whileDragging(front, movePrint, { byXMm: 30, byYMm: 0, snap: noCatch });
    const back = whileDragging(away, movePrint, { byXMm: 0.1, byYMm: 0, snap: noCatch });
    expect(afterDrag(back, 'movePrint').history).toBe(front.history);
  });
});

describe('nudging a print', () => {
  it.each([
    ['in', false, 3_175],
    ['in', true, 12_700],
    ['cm', false, 2_000],
    ['cm', true, 10_000],
  ] as const)('moves it one step in %s (stride: %s)', (unit, stride, stepUm) => {
    const table = tableWith(['fullFront'], unit);
    expect(readingsOf(afterCommand(table, nudgePrint, { direction: 'down', stride })).dropUm).toBe(inches(3) + stepUm);
    expect(readingsOf(afterCommand(table, nudgePrint, { direction: 'left', stride })).acrossUm).toBe(-stepUm);
  });

  it('joins a long press into one step to undo', () => {
    const down = { direction: 'down', stride: false } as const;
    const first = afterCommand(front, nudgePrint, down);
    const long = afterCommand(afterCommand(first, nudgePrint, down, true), nudgePrint, down, true);
    expect(readingsOf(long).dropUm).toBe(inches(3 + 3 / 8));
    expect(afterUndo(long).history.present).toBe(front.history.present);
    const two = afterCommand(first, nudgePrint, down);
    expect(afterUndo(two).history.present).toBe(first.history.present);
  });
});

describe('the size group of the size shown', () => {
  it('is the only one an edit changes', () => {
    const youth = afterCommand(showing(front, YOUTH_M, 'fullFront'), setDrop, { dropUm: inches(1) });
    const { print } = printInHand(tableState(youth));
    expect(groupFor(print, YOUTH_M).dropUm).toBe(inches(1));
    expect(groupFor(print, ADULT_M)).toBe(groupFor(printInHand(tableState(front)).print, ADULT_M));
  });

  it('comes into view when what was undone belongs to it', () => {
    const youth = afterCommand(showing(front, YOUTH_M, 'fullFront'), setDrop, { dropUm: inches(1) });
    expect(afterUndo(showing(youth, ADULT_M, null)).selection).toMatchObject({
      printId: 'fullFront',
      size: { blankId: 'crew-tee-youth' },
    });
  });
});

describe('putting a print in its usual place', () => {
  // Common practice, no source: full front 3 in below the collar between the armholes; left chest 4 in across, 5 in on 2XL and up.
  it('takes it back between the armholes at the usual drop', () => {
    const away = afterCommand(afterCommand(front, setAcross, { acrossUm: 40_000 }), setDrop, { dropUm: 1_000 });
    expect(readingsOf(afterCommand(away, centrePrint, undefined))).toMatchObject({ acrossUm: 0, dropUm: inches(3) });
  });

  it('knows that a chest print sits further out on wide sizes', () => {
    const chest = tableWith(['leftChest']);
    const wide = showing(chest, { blankId: 'crew-tee-adult', sizeId: '3XL' }, 'leftChest');
    const back = afterCommand(afterCommand(wide, setAcross, { acrossUm: 0 }), centrePrint, undefined);
    expect(readingsOf(back)).toMatchObject({ acrossUm: inches(5), dropUm: inches(8) });
  });
});

describe('another location', () => {
  it('brings its starting values and turns the garment to its side', () => {
    let next = 0;
    const newId = () => {
      next += 1;
      return `group-${next}`;
    };
    const moved = afterCommand(afterCommand(front, setDrop, { dropUm: 0 }), setLocation, {
      locationId: 'fullBack',
      newId,
    });
    expect(readingsOf(moved)).toMatchObject({ dropUm: inches(4), acrossUm: 0 });
    expect(moved.selection?.side).toBe('back');
  });
});

describe('turning a print', () => {
  it('keeps its readings, and takes the same turn however it is written', () => {
    const turned = afterCommand(front, setTurn, { turnCentideg: 27_000 });
    expect(printInHand(tableState(turned)).print.turnCentideg).toBe(-9_000);
    expect(readingsOf(turned)).toEqual(readingsOf(front));
  });
});
