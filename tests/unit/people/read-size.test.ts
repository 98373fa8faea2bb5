import { describe, expect, it } from 'vitest';
import { itemsText, readItems } from '@/lib/domain/people/items-text';
import { readSize } from '@/lib/domain/people/read-size';
import { HOOD, TEE } from './some-list';

const read = (text: string, garment = TEE) => {
  const size = readSize(text, garment.sizes);
  if (size.ok) return `${size.size.ageBand} ${size.size.label}`;
  return size.reason === 'ambiguous' ? size.choices.map(({ ageBand }) => ageBand) : size.reason;
};

describe('sizes as the trade writes them', () => {
  // Common practice, no source.
  it.each([
    ['youth M', 'youth M'],
    ['YM', 'youth M'],
    ['y m', 'youth M'],
    ['Y-XL', 'youth XL'],
    ['M (youth)', 'youth M'],
    ['Youth Medium', 'youth M'],
    ['kids small', 'youth S'],
    ['children’s L', 'youth L'],
    ['Adult M', 'adult M'],
    ['AM', 'adult M'],
    ['mens large', 'adult L'],
    ['2X', 'adult 2XL'],
    ['XXL', 'adult 2XL'],
    ['2xl', 'adult 2XL'],
    ['xx-large', 'adult 2XL'],
    ['XXXL', 'adult 3XL'],
    ['ＸＸＬ', 'adult 2XL'],
    ['size: xs', 'youth XS'],
    ['extra small', 'youth XS'],
  ])('reads %s', (text, size) => expect(read(text)).toBe(size));

  it('asks about a bare M where youth and adult are both offered, and reads it where only one is', () => {
    expect(read('M')).toEqual(['youth', 'adult']);
    expect(read('medium')).toEqual(['youth', 'adult']);
    expect(read('M', HOOD)).toBe('adult M');
  });

  it('asks about a women’s size where none is offered by that name', () => {
    expect(read('ladies M')).toEqual(['adult']);
  });

  it('says of a size that is none, and of one that is not offered, which it is', () => {
    expect(read('blue')).toBe('unknown');
    expect(read('6XL')).toBe('notOffered');
    expect(read('youth 3XL')).toBe('notOffered');
    expect(read('YM', HOOD)).toBe('notOffered');
  });
});

describe('a cell of sizes', () => {
  const cell = (text: string) =>
    itemsText(
      readItems(text, TEE, [], () => 'new'),
      TEE,
    );

  it.each([
    ['YM', 'Youth M'],
    ['2 × 2XL', '2 × 2XL'],
    ['2 x adult m', '2 × Adult M'],
    ['adult m x2', '2 × Adult M'],
    ['YM, YL', 'Youth M, Youth L'],
    ['YM and 3 2X', 'Youth M, 3 × 2XL'],
    ['2XL', '2XL'],
    ['', ''],
    ['M', 'M'],
    ['the usual', 'the usual'],
  ])('reads %j as %j', (text, said) => expect(cell(text)).toBe(said));

  it('reads back what it says to the same garments', () => {
    for (const text of ['2 × YM, 3XL', 'M', 'something blue', '12 × Adult S'])
      expect(cell(cell(text))).toBe(cell(text));
  });
});
