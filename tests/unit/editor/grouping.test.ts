import { describe, expect, it } from 'vitest';
import { printFit } from '@/lib/domain/layout/layout-fit';
import { groupFor, sizeOf } from '@/lib/domain/layout/sizes';
import { gapOnSize } from '@/lib/domain/layout/stack-drops';
import { umFromInches } from '@/lib/domain/measure/length';
import { printInHand } from '@/lib/editor/chosen-print';
import { addPrint } from '@/lib/editor/commands/add-print';
import { removePrint } from '@/lib/editor/commands/change-print';
import { groupSuggestion, oneWidth, suggestGroups } from '@/lib/editor/commands/group-sizes';
import { keepUnder, letGoOfPrint } from '@/lib/editor/commands/keep-under';
import { centrePrint, movePrint, setDrop } from '@/lib/editor/commands/place-print';
import { setHeight, setWidth } from '@/lib/editor/commands/size-print';
import { stackOffer } from '@/lib/editor/stack-offer';
import {
  afterCommand,
  afterRedo,
  afterUndo,
  shownLayout,
  type TableEditor,
  tableState,
  whileDragging,
} from '@/lib/editor/table-editor';
import { LEAF } from '../layout/sample-layout';
import { ADULT_M, readingsOf, showing, tableWith, YOUTH_M } from './sample-table';

let next = 0;
const newId = () => {
  next += 1;
  return `new-${next}`;
};
const inches = umFromInches;

describe('widths that look alike', () => {
  const front = afterCommand(tableWith(['fullFront']), setWidth, { widthUm: inches(11) });

  it('are set in one step for all sizes, the one shown as it was', () => {
    const alike = afterCommand(front, suggestGroups, { newId });
    expect(readingsOf(alike)).toEqual(readingsOf(front));
    const { print } = printInHand(tableState(alike));
    expect(groupFor(print, YOUTH_M).widthUm).toBeLessThan(inches(11));
    expect(printFit(alike.history.present, print).flatMap(({ findings }) => findings)).toEqual([]);
    expect(afterUndo(alike).history.present).toBe(front.history.present);
  });

  it('are offered until they are set', () => {
    expect(groupSuggestion(tableState(front))?.widthsUm.length).toBe(3);
    const alike = afterCommand(front, suggestGroups, { newId });
    expect(groupSuggestion(tableState(alike))).toBeNull();
    expect(afterCommand(alike, suggestGroups, { newId })).toBe(alike);
  });

  it('go back to one width, that of the size shown', () => {
    const alike = afterCommand(front, suggestGroups, { newId });
    const one = afterCommand(showing(alike, YOUTH_M, 'fullFront'), oneWidth, undefined);
    const { print, group } = printInHand(tableState(one));
    expect(new Set(print.sizeGroups.map(({ widthUm }) => widthUm))).toEqual(new Set([group.widthUm]));
    expect(group.widthUm).toBe(groupFor(printInHand(tableState(alike)).print, YOUTH_M).widthUm);
    expect(afterCommand(one, oneWidth, undefined)).toBe(one);
  });
});

/** How far the number is under the name on the size shown. */
function gapOf(editor: TableEditor): number {
  const { prints, garments } = shownLayout(editor);
  const [name, number] = ['upperBack', 'backNumber'].map((id) => prints.find(({ printId }) => printId === id));
  const [garment] = garments;
  if (!(name && number && garment)) throw new Error('no name or number');
  return gapOnSize(name, number, sizeOf(garment, editor.selection?.size ?? ADULT_M));
}

describe('a number kept under its name', () => {
  const name = tableWith(['upperBack']);
  const both = afterCommand(name, addPrint, {
    printId: 'backNumber',
    name: 'Number',
    art: LEAF,
    locationId: 'backNumber',
    newId,
  });
  const nameInHand = showing(both, ADULT_M, 'upperBack');
  const numberInHand = showing(both, ADULT_M, 'backNumber');
  const halfStep = inches(1 / 16);
  const isNear = (um: number, to: number) => Math.abs(um - to) <= halfStep + 2;

  it('is kept from the moment it is added', () => {
    expect(isNear(gapOf(numberInHand), inches(1))).toBe(true);
  });

  it.each([
    ['lowered', (editor: TableEditor) => afterCommand(editor, setDrop, { dropUm: inches(5) })],
    ['made taller', (editor: TableEditor) => afterCommand(editor, setHeight, { heightUm: inches(4) })],
    [
      'dragged, while it is dragged',
      (editor: TableEditor) => whileDragging(editor, movePrint, { byXMm: 3, byYMm: 60, snap: null }),
    ],
    ['set to widths that look alike', (editor: TableEditor) => afterCommand(editor, suggestGroups, { newId })],
  ])('follows when the name is %s', (_, edit) => {
    const after = edit(nameInHand);
    expect(shownLayout(after)).not.toBe(shownLayout(nameInHand));
    expect(isNear(gapOf(after), inches(1))).toBe(true);
    expect(isNear(gapOf(showing(after, YOUTH_M, 'upperBack')), inches(1))).toBe(true);
  });

  it('and the name go back in one step', () => {
    const lowered = afterCommand(nameInHand, setDrop, { dropUm: inches(5) });
    expect(afterUndo(lowered).history.present).toBe(both.history.present);
  });

  it('gives the hand over to the name when a change of the name is undone or done again', () => {
    const lowered = afterCommand(nameInHand, setDrop, { dropUm: inches(5) });
    const undone = afterUndo(showing(lowered, ADULT_M, 'backNumber'));
    expect(printInHand(tableState(undone)).print.printId).toBe('upperBack');
    const redone = afterRedo(showing(undone, ADULT_M, 'backNumber'));
    expect(printInHand(tableState(redone)).print.printId).toBe('upperBack');
  });

  it('stays in hand when its own change is undone', () => {
    const moved = afterCommand(numberInHand, movePrint, { byXMm: 20, byYMm: 25.4, snap: null });
    expect(printInHand(tableState(afterUndo(showing(moved, ADULT_M, 'upperBack')))).print.printId).toBe('backNumber');
  });

  it('takes the gap it is moved to, and keeps it at its usual place', () => {
    const moved = afterCommand(numberInHand, movePrint, { byXMm: 20, byYMm: 25.4, snap: null });
    expect(isNear(gapOf(moved), inches(2))).toBe(true);
    const centred = afterCommand(moved, centrePrint, undefined);
    expect(readingsOf(centred)).toEqual({ ...readingsOf(moved), acrossUm: 0 });
    const lowered = afterCommand(showing(centred, ADULT_M, 'upperBack'), setDrop, { dropUm: inches(5) });
    expect(isNear(gapOf(lowered), inches(2))).toBe(true);
  });

  it('stays where it is when let go, and is offered the same gap again', () => {
    expect(stackOffer(tableState(numberInHand))).toBeNull();
    const free = afterCommand(numberInHand, letGoOfPrint, undefined);
    expect(readingsOf(free)).toEqual(readingsOf(numberInHand));
    expect(stackOffer(tableState(free))?.upper.printId).toBe('upperBack');
    expect(stackOffer(tableState(free))?.gapUm).toBe(gapOf(free));
    const kept = afterCommand(free, keepUnder, undefined);
    expect(readingsOf(kept)).toEqual(readingsOf(free));
    expect(printInHand(tableState(kept)).print.below).toEqual({ printId: 'upperBack', gapUm: gapOf(free) });
  });

  it('is free when the name is removed', () => {
    const removed = afterCommand(nameInHand, removePrint, undefined);
    const alone = showing(removed, ADULT_M, 'backNumber');
    expect(printInHand(tableState(alone)).print.below).toBeUndefined();
    expect(readingsOf(alone)).toEqual(readingsOf(numberInHand));
  });
});
