import { describe, expect, it } from 'vitest';
import { layoutFault } from '@/lib/domain/layout/faults';
import { LOCATIONS } from '@/lib/domain/layout/locations';
import { placedPrint, printsOn } from '@/lib/domain/layout/scene';
import { groupFor } from '@/lib/domain/layout/sizes';
import { chosenPrint, printInHand } from '@/lib/editor/chosen-print';
import { setTurn } from '@/lib/editor/commands/change-print';
import { copySide, otherGarments } from '@/lib/editor/commands/copy-side';
import { garmentsSuiting, setGarments } from '@/lib/editor/commands/cover-garments';
import { duplicatePrint } from '@/lib/editor/commands/duplicate-print';
import { mirrorPrint, mirrorSleeve } from '@/lib/editor/commands/mirror-print';
import { layAtBottom, layOnTop, lowerPrint, raisePrint } from '@/lib/editor/commands/order-print';
import { setAcross, setDrop } from '@/lib/editor/commands/place-print';
import { setWidth } from '@/lib/editor/commands/size-print';
import { nextName } from '@/lib/editor/print-name';
import { afterCommand, newTableEditor, type TableEditor, tableState, wholeLayout } from '@/lib/editor/table-editor';
import { newId, TWO_GARMENTS } from './command-doings';
import { ADULT_M, showing, tableWith } from './sample-table';

const HOOD_M = { blankId: 'hood-adult', sizeId: 'M' };
const twoGarments = (printId: string) => showing(newTableEditor(TWO_GARMENTS, 'in', false), ADULT_M, printId);
const pile = (editor: TableEditor) =>
  printsOn(wholeLayout(editor), { garmentId: 'tee', side: 'front' }).map(({ printId }) => printId);

describe('the order in which prints lie', () => {
  const table = tableWith(['fullFront', 'fullBack', 'leftChest', 'rightChest', 'centreChest']);

  it('goes up and down by one among the prints of the side, whatever other sides hold in between', () => {
    const raised = afterCommand(table, raisePrint, undefined);
    expect(pile(raised)).toEqual(['leftChest', 'fullFront', 'rightChest', 'centreChest']);
    expect(pile(afterCommand(raised, lowerPrint, undefined))).toEqual(pile(table));
  });

  it('goes all the way, and no further', () => {
    const top = afterCommand(table, layOnTop, undefined);
    expect(pile(top).at(-1)).toBe('fullFront');
    expect(raisePrint.canRun(tableState(top))).toBe(false);
    const bottom = afterCommand(top, layAtBottom, undefined);
    expect(pile(bottom)).toEqual(pile(table));
    expect(lowerPrint.canRun(tableState(bottom))).toBe(false);
  });
});

describe('another one of it', () => {
  it('lies half an inch further down, over it, under a name of its own, and comes in hand', () => {
    const table = tableWith(['fullFront', 'leftChest']);
    const copied = afterCommand(table, duplicatePrint, { newId });
    const { print, group } = printInHand(tableState(copied));
    expect(pile(copied)).toEqual(['fullFront', print.printId, 'leftChest']);
    expect(print.name).toBe('fullFront 2');
    expect(group.dropUm - printInHand(tableState(table)).group.dropUm).toBe(12_700);
    expect(layoutFault(wholeLayout(copied))).toBeNull();
  });

  it('is named with the next number nothing has', () => {
    const called = (...names: string[]) => names.map((name) => ({ name }));
    expect(nextName('Crest', called('Crest'))).toBe('Crest 2');
    expect(nextName('Crest 2', called('Crest', 'Crest 2', 'Crest 3'))).toBe('Crest 4');
    expect(nextName('é'.repeat(80), []).length).toBeLessThanOrEqual(80);
    expect(nextName('🪶'.repeat(40), []).isWellFormed()).toBe(true);
  });
});

describe('mirroring', () => {
  it('lies as far to the other side of the wearer, turned the other way round', () => {
    const turned = afterCommand(tableWith(['leftSleeve']), setTurn, { turnCentideg: 1_500 });
    const set = afterCommand(turned, setAcross, { acrossUm: 12_700 });
    const mirrored = afterCommand(set, mirrorPrint, { newId });
    const { print } = printInHand(tableState(mirrored));
    expect([print.locationId, print.side, print.turnCentideg]).toEqual(['rightSleeve', 'rightSleeve', -1_500]);
    // On the flats themselves: the ink of one sleeve is as far left of its fold as that of the other is right of it.
    const middles = wholeLayout(mirrored).prints.map((each) => {
      const chosen = chosenPrint(tableState(showing(mirrored, ADULT_M, each.printId)));
      if (!chosen) throw new Error(`${each.printId} is not on the tee`);
      const { inkBox } = placedPrint(each, ADULT_M, chosen.flat);
      return [inkBox.x + inkBox.width / 2, inkBox.y + inkBox.height];
    });
    expect(middles[1]?.[0]).toBeCloseTo(-(middles[0]?.[0] ?? Number.NaN), 6);
    expect(middles[1]?.[1]).toBeCloseTo(middles[0]?.[1] ?? Number.NaN, 6);
  });

  it('takes a chest print to the other chest', () => {
    const mirrored = afterCommand(tableWith(['leftChest']), mirrorPrint, { newId });
    const [left, right] = wholeLayout(mirrored).prints;
    expect(right?.locationId).toBe('rightChest');
    expect(right && groupFor(right, ADULT_M).acrossUm).toBe(-(left ? groupFor(left, ADULT_M).acrossUm : 0));
    expect(mirrorPrint.canRun(tableState(tableWith(['fullFront'])))).toBe(false);
  });

  it('brings the other sleeve up to date instead of laying a second print there', () => {
    const once = afterCommand(tableWith(['leftSleeve']), mirrorSleeve, { newId });
    const wider = afterCommand(showing(once, ADULT_M, 'leftSleeve'), setWidth, { widthUm: 50_800 });
    const twice = afterCommand(wider, mirrorSleeve, { newId });
    const widths = wholeLayout(twice).prints.map((print) => groupFor(print, ADULT_M).widthUm);
    expect(widths).toEqual([50_800, 50_800]);
    expect(wholeLayout(afterCommand(showing(twice, ADULT_M, 'leftSleeve'), mirrorSleeve, { newId }))).toBe(
      wholeLayout(twice),
    );
  });
});

describe('the garments of a print', () => {
  it('gives sizes newly covered the starting values of the location, and takes them away again', () => {
    const table = afterCommand(twoGarments('fullFront'), setDrop, { dropUm: 100_000 });
    const both = afterCommand(table, setGarments, { garmentIds: ['tee', 'hood'], newId });
    const { print } = printInHand(tableState(both));
    expect(print.garmentIds).toEqual(['tee', 'hood']);
    expect(groupFor(print, ADULT_M).dropUm).toBe(100_000);
    // From the table of starting values (common practice, no source): a hood's full front is 2 1/2 in down.
    expect(groupFor(print, HOOD_M).dropUm).toBe(LOCATIONS.fullFront.byKind?.pulloverHood?.adult?.dropUm);
    expect(layoutFault(wholeLayout(both))).toBeNull();
    const one = afterCommand(both, setGarments, { garmentIds: ['tee'], newId });
    expect(wholeLayout(one)).toEqual(wholeLayout(table));
  });

  it('are never none, and only those its location suits', () => {
    const table = twoGarments('leftSleeve');
    expect(afterCommand(table, setGarments, { garmentIds: [], newId })).toBe(table);
    const { prints } = TWO_GARMENTS;
    const suiting = prints.map((print) => garmentsSuiting(TWO_GARMENTS, print).map(({ garmentId }) => garmentId));
    expect(suiting.every((ids) => ids.includes('tee'))).toBe(true);
  });
});

describe('copying a side to another garment', () => {
  it('keeps the readings, size by size, in prints of their own', () => {
    const table = afterCommand(twoGarments('fullFront'), setWidth, { widthUm: 203_200 });
    expect(otherGarments(tableState(table)).map(({ garmentId }) => garmentId)).toEqual(['hood']);
    const copied = afterCommand(table, copySide, { garmentId: 'hood', newId });
    const onHood = printsOn(wholeLayout(copied), { garmentId: 'hood', side: 'front' });
    expect(onHood.map(({ name }) => name)).toEqual(['fullFront', 'leftChest']);
    expect(onHood[0] && groupFor(onHood[0], HOOD_M).widthUm).toBe(203_200);
    expect(onHood[0]?.garmentIds).toEqual(['hood']);
    expect(pile(copied)).toEqual(pile(table));
    expect(layoutFault(wholeLayout(copied))).toBeNull();
  });
});
