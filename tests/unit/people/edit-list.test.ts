import fc from 'fast-check';
import { expect, it } from 'vitest';
import { editList, editListInTurn } from '@/lib/domain/people/edit-list';
import { lineContent } from '@/lib/domain/people/line-content';
import type { PeopleList } from '@/lib/domain/people/list';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import { line, listOf, teeItem } from './some-list';

const BY = { by: 'Robin', at: '2026-10-03T10:00:00.000Z', letteredColumnIds: ['number'] };

/** What a list says, without versions, confirmations and columns of lines that say nothing. */
const said = ({ columns, settings, lines }: PeopleList) => ({
  columns,
  settings,
  lines: lines.map((each) => [each.personId, lineContent(each), each.meant]),
});

const start = () => {
  const lines = [
    line('Mia Ode', '7', teeItem('youth/M')),
    line('Bo Carr', '22', teeItem('adult/XL')),
    line('Ada', '4'),
  ];
  return listOf(...lines.map((each, at) => ({ ...each, personId: `p${at}` })));
};

/** What is drawn for one change: which kind, whom it is about, a text and a number. */
const drawn = fc.record({
  kind: fc.nat({ max: 6 }),
  personId: fc.constantFrom('p0', 'p1', 'p2', 'p9', 'new-a', 'new-b'),
  columnId: fc.constantFrom('name', 'number'),
  text: fc.string({ unit: 'grapheme', maxLength: 12 }),
  quantity: fc.nat({ max: 9 }),
});
type Drawn = typeof drawn extends fc.Arbitrary<infer Value> ? Value : never;

/** The change a hand would make to the list as it is. */
function aChange(list: PeopleList, { kind, personId, columnId, text, quantity }: Drawn): ListEdit {
  const line = list.lines.find((each) => each.personId === personId);
  switch (kind) {
    case 0:
      return { edit: 'field', personId, columnId, was: line?.fields[columnId] ?? '', text };
    case 1:
      return { edit: 'remove', personId, seen: lineContent(line ?? { fields: {}, items: [] }) };
    case 2: {
      const added = { personId: `new-${text}`, fields: { name: text }, items: [teeItem('youth/S')], meant: [] };
      return { edit: 'add', line: added, before: quantity > 4 ? personId : null };
    }
    case 3: {
      const why = quantity > 4 ? text : null;
      const meant = { code: 'nameTwice', place: 'name', about: 'mia 2', why };
      return { edit: 'meant', personId: quantity > 7 ? null : personId, meant };
    }
    case 4:
      return { edit: 'items', personId, garmentId: 'tee', was: line?.items ?? [], items: [teeItem('adult/S', 2)] };
    case 5:
      return { edit: 'spare', garmentId: 'tee', blankId: 'tee-youth', sizeId: 'M', quantity };
    default: {
      const columns = list.columns.filter((column) => column.columnId === 'number');
      return { edit: 'columns', was: [...list.columns], columns };
    }
  }
}

it('says what it said before once every change is taken back', () => {
  fc.assert(
    fc.property(fc.array(drawn, { maxLength: 8 }), (changes) => {
      let list = start();
      const inverses: (readonly ListEdit[])[] = [];
      for (const change of changes) {
        const edited = editList(list, aChange(list, change), BY);
        if (!edited.ok) continue;
        list = edited.list;
        inverses.push(edited.inverse);
      }
      const back = editListInTurn(list, inverses.toReversed().flat(), BY);
      expect(back.refused).toEqual([]);
      expect(said(back.list)).toEqual(said(start()));
    }),
    { numRuns: 300 },
  );
});

it('leaves a cell as somebody else wrote it meanwhile, and takes another cell of the same line', () => {
  const list = start();
  const theirs = editList(list, { edit: 'field', personId: 'p0', columnId: 'number', was: '7', text: '15' }, BY);
  if (!theirs.ok) throw new Error(theirs.reason);
  const mine: ListEdit = { edit: 'field', personId: 'p0', columnId: 'number', was: '7', text: '51' };
  expect(editList(theirs.list, mine, BY)).toEqual({ ok: false, reason: 'changedElsewhere' });
  const name = editList(
    theirs.list,
    { edit: 'field', personId: 'p0', columnId: 'name', was: 'Mia Ode', text: 'Mia' },
    BY,
  );
  expect(name.ok && name.list.lines[0]?.fields).toEqual({ name: 'Mia', number: '15' });
});

it('takes a confirmation away with any change to the line, and refuses one of a line that has changed', () => {
  const list = start();
  const [mia] = list.lines;
  const seen = mia ? lineContent(mia) : '';
  const confirmed = editList(list, { edit: 'confirm', personId: 'p0', seen, confirmed: true }, BY);
  expect(confirmed.ok && confirmed.list.lines[0]?.confirmed).toEqual({ by: 'Robin', at: BY.at });
  if (!confirmed.ok) return;
  const changed = editList(
    confirmed.list,
    { edit: 'field', personId: 'p0', columnId: 'name', was: 'Mia Ode', text: 'Mía' },
    BY,
  );
  expect(changed.ok && changed.list.lines[0]?.confirmed).toBeNull();
  if (!changed.ok) return;
  expect(editList(changed.list, { edit: 'confirm', personId: 'p0', seen, confirmed: true }, BY)).toEqual({
    ok: false,
    reason: 'changedElsewhere',
  });
});

it('keeps a column that lettering prints', () => {
  const list = start();
  const [name] = list.columns;
  expect(editList(list, { edit: 'columns', was: [...list.columns], columns: name ? [name] : [] }, BY)).toEqual({
    ok: false,
    reason: 'lettered',
  });
});

it('keeps a name as it is written, in NFC and without control characters', () => {
  const edited = editList(
    start(),
    { edit: 'field', personId: 'p0', columnId: 'name', was: 'Mia Ode', text: 'Jose\u0301\u0000 👩‍👩‍👧\nLi' },
    BY,
  );
  expect(edited.ok && edited.list.lines[0]?.fields.name).toBe('José 👩‍👩‍👧 Li');
});
