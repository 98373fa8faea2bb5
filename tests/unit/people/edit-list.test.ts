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

const person = fc.constantFrom('p0', 'p1', 'p2', 'p9');
const text = fc.string({ unit: 'grapheme', maxLength: 12 });
const anEdit = (list: PeopleList) => {
  const seen = (personId: string) =>
    lineContent(list.lines.find((each) => each.personId === personId) ?? { fields: {}, items: [] });
  return fc.oneof<fc.Arbitrary<ListEdit>[]>(
    fc
      .record({
        edit: fc.constant('field' as const),
        personId: person,
        columnId: fc.constantFrom('name', 'number'),
        text,
      })
      .map((edit) => ({
        ...edit,
        was: list.lines.find(({ personId }) => personId === edit.personId)?.fields[edit.columnId] ?? '',
      })),
    person.map((personId) => ({ edit: 'remove' as const, personId, seen: seen(personId) })),
    fc.record({ name: text, before: fc.option(person) }).map(({ name, before }) => ({
      edit: 'add' as const,
      line: { personId: `new-${name}`, fields: { name }, items: [teeItem('youth/S')], meant: [] },
      before,
    })),
    fc.record({ personId: fc.option(person), why: fc.option(text) }).map(({ personId, why }) => ({
      edit: 'meant' as const,
      personId,
      meant: { code: 'nameTwice', place: 'name', about: 'mia 2', why },
    })),
    person.map((personId) => ({
      edit: 'items' as const,
      personId,
      garmentId: 'tee',
      was: list.lines.find((each) => each.personId === personId)?.items ?? [],
      items: [teeItem('adult/S', 2)],
    })),
    fc
      .nat({ max: 9 })
      .map((quantity) => ({ edit: 'spare' as const, garmentId: 'tee', blankId: 'tee-youth', sizeId: 'M', quantity })),
    fc.constant({
      edit: 'columns' as const,
      was: [...list.columns],
      columns: list.columns.filter(({ columnId }) => columnId === 'number'),
    }),
  );
};

it('says what it said before once every change is taken back', () => {
  fc.assert(
    fc.property(fc.gen(), (draw) => {
      let list = start();
      const inverses: (readonly ListEdit[])[] = [];
      for (let count = 0; count < 8; count += 1) {
        const edited = editList(list, draw(anEdit, list), BY);
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
