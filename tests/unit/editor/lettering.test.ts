import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layoutDocumentSchema, type Print } from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import { LOCATION_IDS } from '@/lib/domain/layout/locations';
import { letteringOf as letteringIn } from '@/lib/domain/layout/print-content';
import { placedPrint } from '@/lib/domain/layout/scene';
import { groupFor } from '@/lib/domain/layout/sizes';
import { typeCase } from '@/lib/domain/layout/type-case';
import type { People } from '@/lib/domain/people/person';
import { printInHand } from '@/lib/editor/chosen-print';
import { addLettering, changeLettering } from '@/lib/editor/commands/lettering-print';
import { centrePrint, setDrop } from '@/lib/editor/commands/place-print';
import { resizePrint, setLetterHeight, setWidth } from '@/lib/editor/commands/size-print';
import { stepSize } from '@/lib/editor/commands/step-print';
import { keptTable } from '@/lib/editor/kept-table';
import { columnsOffered, likelyLetteringLocation, newLettering } from '@/lib/editor/new-lettering';
import { frameCorners } from '@/lib/editor/print-frame';
import {
  afterCommand,
  afterUndo,
  newTableEditor,
  shownLayout,
  type TableEditor,
  tableState,
  withPersonLookedAt,
  withType,
} from '@/lib/editor/table-editor';
import { typedMillimetres, typedPercent } from '@/lib/editor/typed-lettering';
import { writtenLines } from '@/lib/editor/written-lines';
import { loadTypeEngine } from '@/lib/server/text/load-type-engine';
import { teeWithPrints } from '../layout/sample-layout';
import { letteringOf, shippedFont } from '../lettering/fonts-at-hand';
import { DOINGS, type Doing, done, newId, TWO_GARMENTS } from './command-doings';
import { ADULT_M, showing } from './sample-table';

const engine = await loadTypeEngine([shippedFont('Oswald'), shippedFont('Anton')]);

const PEOPLE: People = {
  columns: [{ columnId: 'name', name: 'Name', kind: 'name' }],
  lines: [
    { personId: 'mia', fields: { name: 'Mia' }, items: [] },
    { personId: 'jo', fields: { name: 'Jo-Ann Featherstonehaugh' }, items: [] },
  ],
};
const TYPE = typeCase(engine, PEOPLE);

/** A table with type at hand and a name on the upper back. */
function lettered(): TableEditor {
  const bare = withType(newTableEditor({ ...teeWithPrints([]), people: PEOPLE }, 'in', false), TYPE);
  const lettering = letteringOf(['{name}']);
  const added = { printId: 'name', name: 'Name', lettering, locationId: 'upperBack', newId } as const;
  return showing(afterCommand(bare, addLettering, added), ADULT_M, 'name');
}

function inHand(editor: TableEditor): Print {
  return printInHand(tableState(editor)).print;
}

describe('adding lettering', () => {
  it('sets it on the garment at the usual letter height, a number under a name', () => {
    const editor = lettered();
    expect(groupFor(inHand(editor), ADULT_M)).toMatchObject({ capHeightUm: 50_800, widthUm: 254_000 });
    const lettering = letteringOf(['{number}']);
    const more = { printId: 'number', name: 'Number', lettering, locationId: 'backNumber', newId } as const;
    const number = inHand(showing(afterCommand(editor, addLettering, more), ADULT_M, 'number'));
    expect(number.below?.printId).toBe('name');
    expect(groupFor(number, ADULT_M).capHeightUm).toBe(203_200);
  });

  it('does nothing while its font is not open', () => {
    const editor = newTableEditor(teeWithPrints([]), 'in', false);
    const added = { printId: 'n', name: 'N', lettering: letteringOf(['A']), locationId: 'upperBack', newId } as const;
    expect(afterCommand(editor, addLettering, added)).toBe(editor);
  });

  it('is offered as a name on the upper back first, then as a number under it', () => {
    const bare = newTableEditor(teeWithPrints([]), 'in', false);
    expect(likelyLetteringLocation(tableState(bare))).toBe('upperBack');
    expect(likelyLetteringLocation(tableState(lettered()))).toBe('backNumber');
    expect(newLettering('backNumber', shippedFont('Oswald'), '#20344F')).toMatchObject({
      lines: ['{number}'],
      hex: '#FFFFFF',
    });
    expect(newLettering('upperBack', shippedFont('Oswald'), '#FFFFFF').hex).not.toBe('#FFFFFF');
    expect(columnsOffered({ columns: [] }, { name: 'Name', number: 'Number' })).toHaveLength(2);
  });
});

describe('changing lettering', () => {
  it('says, sets and colours it otherwise, each to be undone', () => {
    const before = lettered();
    const change = { lines: ['Team'], hex: '#FFCC00', outline: { hex: '#000000', widthUm: 2_000 } };
    const after = afterCommand(before, changeLettering, { change });
    expect(letteringIn(inHand(after))).toMatchObject(change);
    expect(shownLayout(afterUndo(after))).toBe(shownLayout(before));
  });

  it('leaves it as it was where that cannot be', () => {
    const before = lettered();
    for (const change of [{ lines: [] }, { archPercent: 90 }, { hex: 'red' }, { font: shippedFont('Pacifico') }]) {
      expect(afterCommand(before, changeLettering, { change })).toBe(before);
    }
  });

  it('sets letters taller by a corner, by its step and as typed, and never wider than they may be', () => {
    const before = lettered();
    const typed = afterCommand(before, setLetterHeight, { capHeightUm: 63_500 });
    expect(groupFor(inHand(typed), ADULT_M).capHeightUm).toBe(63_500);
    const stepped = afterCommand(before, stepSize, { towards: 'wider' });
    expect(groupFor(inHand(stepped), ADULT_M).capHeightUm).toBe(50_800 + 3_175);
    const { flat } = printInHand(tableState(before));
    const { frame, matrix } = placedPrint(inHand(before), ADULT_M, flat, TYPE.sample);
    const { bottomRight, topLeft } = frameCorners(frame, matrix);
    const toMm = { x: topLeft.x + 2 * (bottomRight.x - topLeft.x), y: topLeft.y + 2 * (bottomRight.y - topLeft.y) };
    const dragged = afterCommand(before, resizePrint, { corner: 'bottomRight', toMm, snap: null });
    expect(groupFor(inHand(dragged), ADULT_M).capHeightUm).toBeGreaterThan(90_000);
    expect(groupFor(inHand(dragged), ADULT_M).widthUm).toBe(254_000);
    const narrow = afterCommand(before, setWidth, { widthUm: 100_000 });
    expect(placedPrint(inHand(narrow), ADULT_M, flat, TYPE.longest).inkBox.width).toBeLessThanOrEqual(100.01);
  });

  it('goes back to its usual place with its letter height as it is', () => {
    const moved = afterCommand(lettered(), setDrop, { dropUm: 200_000 });
    const tall = afterCommand(moved, setLetterHeight, { capHeightUm: 60_000 });
    const group = groupFor(inHand(afterCommand(tall, centrePrint, undefined)), ADULT_M);
    expect(group).toMatchObject({ dropUm: 88_900, capHeightUm: 60_000 });
  });
});

describe('looking at somebody’s words', () => {
  it('is no edit, and is not kept in the browser', () => {
    const before = lettered();
    const editor = withPersonLookedAt(before, 'jo');
    expect(shownLayout(editor)).toBe(shownLayout(before));
    expect(editor.history).toBe(before.history);
    expect(JSON.stringify(keptTable(editor, 1))).not.toContain('Jo-Ann');
    const { flat } = printInHand(tableState(editor));
    const wide = placedPrint(inHand(editor), ADULT_M, flat, TYPE.of('jo')).inkBox.width;
    expect(wide).toBeGreaterThan(placedPrint(inHand(editor), ADULT_M, flat, TYPE.of('mia')).inkBox.width);
    expect(TYPE.of('nobody on the list')).toBe(TYPE.sample);
  });
});

describe('what is typed for lettering', () => {
  it('is its lines, NFC, without what does not print', () => {
    expect(writtenLines('Zoe\u0308\r\n{number}\n\n')).toEqual({ ok: true, lines: ['Zoë', '{number}'] });
    expect(writtenLines('a\u0000\u200bb')).toEqual({ ok: true, lines: ['ab'] });
    // A joiner is part of how some letters and emoji are written.
    expect(writtenLines('क्‍ष')).toEqual({ ok: true, lines: ['क्‍ष'] });
    expect(writtenLines(' \n ')).toEqual({ ok: false, reason: 'nothing' });
    expect(writtenLines('a\nb\nc\nd\ne\nf\ng')).toEqual({ ok: false, reason: 'tooManyLines' });
    expect(writtenLines('x'.repeat(201))).toEqual({ ok: false, reason: 'tooLong' });
    expect(writtenLines('a\ud800')).toEqual({ ok: false, reason: 'notText' });
  });

  it('is percentages and millimetres as people write them', () => {
    const limits = { least: -40, most: 40 };
    expect(['12', '-5 %', '+7,5', '−3'].map((text) => typedPercent(text, limits))).toEqual([12, -5, 7.5, -3]);
    expect(['', 'x', '41', '1e1'].map((text) => typedPercent(text, limits))).toEqual([null, null, null, null]);
    expect(['none', '', '0', '0 mm'].map((text) => typedMillimetres(text, 'none'))).toEqual(
      Array(4).fill({ ok: true, um: null }),
    );
    expect(typedMillimetres('2.5 mm', 'none')).toEqual({ ok: true, um: 2_500 });
    expect(['11', 'wide', '-1'].map((text) => typedMillimetres(text, 'none').ok)).toEqual([false, false, false]);
  });
});

describe('working at a table with lettering', () => {
  const anyUm = fc.oneof(fc.integer({ min: -2_000_000, max: 2_000_000 }), fc.double());
  const onPrint = (run: (editor: TableEditor) => TableEditor, id: string): Doing => {
    return { id, size: ADULT_M, print: 0, drag: false, run };
  };
  const lettering = fc.oneof(
    fc
      .record({
        lines: fc.array(fc.string({ maxLength: 20 }), { minLength: 1, maxLength: 3 }),
        locationId: fc.constantFrom(...LOCATION_IDS),
      })
      .map(({ lines, locationId }) =>
        onPrint(
          (editor) =>
            afterCommand(editor, addLettering, {
              printId: newId(),
              name: 'Words',
              lettering: letteringOf(lines),
              locationId,
              newId,
            }),
          'addLettering',
        ),
      ),
    fc
      .record({ archPercent: fc.integer({ min: -60, max: 60 }), trackingPermille: fc.integer({ min: -200, max: 400 }) })
      .map((change) => onPrint((editor) => afterCommand(editor, changeLettering, { change }), 'changeLettering')),
    anyUm.map((capHeightUm) => onPrint((editor) => afterCommand(editor, setLetterHeight, { capHeightUm }), 'height')),
  );

  it('keeps every layout on the way a whole one, and undoing leads back to where it began', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(lettering, DOINGS), { maxLength: 14 }), (all) => {
        const start = withType(newTableEditor(TWO_GARMENTS, 'in', false), TYPE);
        let editor = start;
        for (const each of all) {
          editor = done(editor, each);
          const layout = shownLayout(editor);
          expect(layoutDocumentSchema.safeParse(layout).error).toBeUndefined();
          expect(layoutFault(layout)).toBeNull();
        }
        for (let step = 0; step < all.length; step += 1) editor = afterUndo(editor);
        expect(shownLayout(editor)).toBe(TWO_GARMENTS);
      }),
      { numRuns: 40 },
    );
  });
});
