import type { GarmentOnOffer, ListItem, ListLine, PeopleList, SizeOnOffer } from '@/lib/domain/people/list';
import { EMPTY_LIST } from '@/lib/domain/people/list';

const size = (blankId: string, ageBand: SizeOnOffer['ageBand'], label: string, words: string): SizeOnOffer => ({
  blankId,
  sizeId: label,
  label,
  ageBand,
  words,
});

/** A tee for adults and youths: what an `M` could be of. */
export const TEE: GarmentOnOffer = {
  garmentId: 'tee',
  name: 'Relay tee',
  sizes: [
    ...['XS', 'S', 'M', 'L', 'XL'].map((label) => size('tee-youth', 'youth', label, `Youth ${label}`)),
    ...['S', 'M', 'L', 'XL'].map((label) => size('tee-adult', 'adult', label, `Adult ${label}`)),
    ...['2XL', '3XL'].map((label) => size('tee-adult', 'adult', label, label)),
  ],
  ordered: [],
};

/** A hood for adults alone. */
export const HOOD: GarmentOnOffer = {
  garmentId: 'hood',
  name: 'Boathouse hood',
  sizes: ['S', 'M', 'L', 'XL', '2XL'].map((label) => size('hood-adult', 'adult', label, label)),
  ordered: [],
};

let made = 0;

/** An item of a size of the tee, by `youth/M`; of what was written where there is no such size. */
export function teeItem(written: string, quantity = 1): ListItem {
  const [band, label] = written.split('/');
  made += 1;
  const known = TEE.sizes.find((each) => each.ageBand === band && each.label === label);
  return {
    itemId: `item-${made}`,
    garmentId: 'tee',
    size: known ? { blankId: known.blankId, sizeId: known.sizeId } : null,
    typed: known ? '' : written,
    quantity,
  };
}

/** A line of the list. */
export function line(name: string, number: string, ...items: ListItem[]): ListLine {
  made += 1;
  return { personId: `person-${made}`, fields: { name, number }, items, meant: [], version: 1, confirmed: null };
}

/** A list of lines with the columns every list begins with. */
export function listOf(...lines: ListLine[]): PeopleList {
  return { ...EMPTY_LIST, version: 1, lines };
}

export const AGAINST = { garments: [TEE], letteredColumnIds: [], thisYear: 2026 };
