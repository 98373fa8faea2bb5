import { folded } from '@/lib/domain/people/clean-field';
import { itemsText } from '@/lib/domain/people/items-text';
import { type GarmentOnOffer, garmentOfPlace, type ListLine } from '@/lib/domain/people/list';

/** By which column the lines are put in order. */
export type Sorting = { readonly place: string; readonly down: boolean };

/** What a line says in a column. */
export function saidIn({ fields, items }: ListLine, place: string, garments: readonly GarmentOnOffer[]): string {
  const garment = garments.find(({ garmentId }) => garmentId === garmentOfPlace(place));
  return garment ? itemsText(items, garment) : (fields[place] ?? '');
}

/** The ids of lines in the order of a column: words by their alphabet, numbers by their value, sizes as they are offered; empty ones last. */
export function sortedIds(
  lines: readonly ListLine[],
  { place, down }: Sorting,
  garments: readonly GarmentOnOffer[],
  locale: string,
): string[] {
  const { compare } = new Intl.Collator(locale, { numeric: true, sensitivity: 'base' });
  const garment = garments.find(({ garmentId }) => garmentId === garmentOfPlace(place));
  const rank = (line: ListLine) => {
    const first = line.items.find(({ garmentId }) => garmentId === garment?.garmentId)?.size;
    const at = garment?.sizes.findIndex(
      ({ blankId, sizeId }) => blankId === first?.blankId && sizeId === first?.sizeId,
    );
    return at === undefined || at < 0 ? Number.MAX_SAFE_INTEGER : at;
  };
  const sorted = lines.toSorted((a, b) => {
    const [left, right] = [saidIn(a, place, garments), saidIn(b, place, garments)];
    if (left === '' || right === '') return Number(left === '') - Number(right === '');
    const order = garment ? rank(a) - rank(b) || compare(left, right) : compare(left, right);
    return down ? -order : order;
  });
  return sorted.map(({ personId }) => personId);
}

/** Whether a line says what is looked for in any of its columns. */
export function saysSomewhere(line: ListLine, wanted: string, garments: readonly GarmentOnOffer[]): boolean {
  const looked = folded(wanted);
  if (looked === '') return true;
  const said = [...Object.values(line.fields), ...garments.map((garment) => itemsText(line.items, garment))];
  return said.some((text) => folded(text).includes(looked));
}
