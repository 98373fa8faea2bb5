import { describe, expect, it } from 'vitest';
import { setCounts } from '@/lib/domain/layout/garment-edits';
import { printInHand } from '@/lib/editor/chosen-print';
import { locationsFor } from '@/lib/editor/commands/add-print';
import { strokeText } from '@/lib/editor/key-strokes';
import { likelyLocation } from '@/lib/editor/likely-location';
import { printAt } from '@/lib/editor/print-frame';
import { nameFromFile, printName } from '@/lib/editor/print-name';
import { firstSelection, selectSide, settledSelection } from '@/lib/editor/selection';
import { sizeSpans, spanLabel } from '@/lib/editor/size-spans';
import { commandForStroke } from '@/lib/editor/table-commands';
import { newTableEditor, tableState } from '@/lib/editor/table-editor';
import { teeWithPrints } from '../layout/sample-layout';
import { ADULT_M, tableWith, YOUTH_M } from './sample-table';

const layout = teeWithPrints(['leftChest', 'fullFront', 'fullBack']);
const counted = setCounts(layout, 'tee', [
  { ...YOUTH_M, quantity: 3 },
  { ...ADULT_M, quantity: 8 },
]);

describe('what lies on the table', () => {
  it('begins with the size most are ordered in and the first print of the front', () => {
    expect(firstSelection(counted)).toEqual({ garmentId: 'tee', size: ADULT_M, side: 'front', printId: 'leftChest' });
    expect(firstSelection({ garments: [], prints: [] })).toBeNull();
  });

  it('takes the first print of the side that comes up in hand', () => {
    const first = firstSelection(counted);
    expect(first && selectSide(counted, first, 'back')).toMatchObject({ side: 'back', printId: 'fullBack' });
  });

  it('lets go of what is no longer there', () => {
    const gone = { garmentId: 'tee', size: { blankId: 'x', sizeId: 'x' }, side: 'back' as const, printId: 'x' };
    expect(settledSelection(counted, gone)).toEqual({ garmentId: 'tee', size: ADULT_M, side: 'back', printId: null });
  });

  it('can be locked from the start', () => {
    expect(tableState(newTableEditor(layout, 'in', true)).locked).toBe(true);
  });
});

describe('taking hold of a print', () => {
  const table = tableState(tableWith(['fullFront', 'leftChest']));
  const { flat } = printInHand(table);
  const on = (x: number, y: number) =>
    table.selection && printAt(layout2(), table.selection, flat, { x, y }, 0)?.printId;
  const layout2 = () => table.layout;

  it('finds the one on top under the pointer, and none on bare cloth', () => {
    // Full front: 10 in wide from 3 in below the collar. Left chest: 3 1/2 in wide about 4 in to the wearer's left, 8 in down.
    expect(on(-100, (flat.points.collarSeamCentre?.y ?? Number.NaN) + 90)).toBe('fullFront');
    expect(on(101.6, 203.2)).toBe('leftChest');
    expect(on(0, 20)).toBeUndefined();
  });
});

describe('sizes said shortly', () => {
  const [tee] = layout.garments;
  it('names the first and last of those that follow each other', () => {
    const members = layout.prints
      .find(({ printId }) => printId === 'leftChest')
      ?.sizeGroups.map(({ members }) => members);
    const said = members?.map((each) =>
      (tee ? sizeSpans(tee, each) : []).map((span) => `${span.ageBand} ${spanLabel(span)}`),
    );
    expect(said).toEqual([['youth XS–XL'], ['adult S–XL'], ['adult 2XL–5XL']]);
  });

  it('does not bridge a gap', () => {
    const members = ['S', 'L', 'XL'].map((sizeId) => ({ blankId: 'crew-tee-adult', sizeId }));
    expect(tee && sizeSpans(tee, members).map(spanLabel)).toEqual(['S', 'L–XL']);
  });
});

describe('locations', () => {
  it('are offered front first, and only where every blank has starting values', () => {
    expect(locationsFor(layout.garments).map(({ id }) => id)).toEqual([
      'fullFront',
      'centreChest',
      'leftChest',
      'rightChest',
      'frontNumber',
      'upperBack',
      'fullBack',
      'backNeck',
      'backNumber',
      'leftSleeve',
      'rightSleeve',
    ]);
    expect(locationsFor([{ blanks: [{ ...firstBlank(), ageBand: 'infant' }] }]).map(({ id }) => id)).toEqual([
      'fullFront',
      'centreChest',
      'fullBack',
    ]);
  });
});

describe('where the next picture likely goes', () => {
  // Common practice, no source: full front and full back first, then left chest and back neck.
  it('is a usual place of the side that is up that has no print yet', () => {
    const selection = firstSelection(layout);
    const on = (locations: Parameters<typeof teeWithPrints>[0], side: 'front' | 'back') =>
      selection && likelyLocation({ layout: teeWithPrints(locations), selection: { ...selection, side } });
    expect([on([], 'front'), on(['fullFront'], 'front'), on(['fullFront', 'leftChest'], 'front')]).toEqual([
      'fullFront',
      'leftChest',
      'fullFront',
    ]);
    expect([on(['fullFront'], 'back'), on(['fullBack'], 'back')]).toEqual(['fullBack', 'backNeck']);
    expect(likelyLocation({ layout, selection: null })).toBeNull();
  });
});

describe('key strokes', () => {
  const press = (key: string, held: Partial<Record<'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey', boolean>> = {}) =>
    strokeText({ key, ctrlKey: false, metaKey: false, shiftKey: false, altKey: false, ...held });

  it('are written one way on every keyboard', () => {
    expect([
      press('z', { ctrlKey: true }),
      press('z', { metaKey: true }),
      press('Z', { ctrlKey: true, shiftKey: true }),
    ]).toEqual(['Mod+Z', 'Mod+Z', 'Mod+Shift+Z']);
  });

  it('name the command they run, and none with another key held', () => {
    expect(commandForStroke(press('ArrowLeft'))?.id).toBe('nudgeLeft');
    expect(commandForStroke(press('ArrowUp', { shiftKey: true }))?.id).toBe('strideUp');
    expect(commandForStroke(press('+', { shiftKey: true }))?.id).toBe('wider');
    expect(commandForStroke(press('t'))?.id).toBe('turnOn');
    expect([commandForStroke(press('ArrowUp', { ctrlKey: true })), commandForStroke(press('y'))]).toEqual([null, null]);
  });
});

describe('a print’s name', () => {
  it('is tidied, and refused when it says nothing', () => {
    expect(printName('  Heron \n crest ')).toBe('Heron crest');
    expect([printName(' '), printName('x'.repeat(81)), printName('\ud800')]).toEqual([null, null, null]);
  });

  it('comes from the file the picture was in', () => {
    expect(nameFromFile('C:\\art\\heron_crest.final.png')).toBe('heron crest.final');
    expect(nameFromFile('.png')).toBeNull();
  });
});

function firstBlank() {
  const blank = layout.garments[0]?.blanks[0];
  if (!blank) throw new Error('the sample has no blank');
  return blank;
}
