import type { GarmentOnOffer, ListItem, ListLine } from './list';
import { offersSize, sizePlace } from './list';
import type { Finding } from './list-check';
import { readSize } from './read-size';

/** What is found in a line's sizes, each with its place and what it was said of. */
export function sizeFindings(
  line: ListLine,
  garments: readonly GarmentOnOffer[],
): { place: string; finding: Finding; about: string }[] {
  const [first] = garments;
  if (!first) return [];
  const known = line.items.filter(({ garmentId }) => garments.some((garment) => garment.garmentId === garmentId));
  if (known.length === 0) {
    return [{ place: sizePlace(first.garmentId), finding: { code: 'sizeMissing' }, about: '' }];
  }
  return known.flatMap((item) => {
    const garment = garments.find(({ garmentId }) => garmentId === item.garmentId);
    const finding = garment && itemFinding(item, garment);
    if (!finding) return [];
    return [{ place: sizePlace(item.garmentId), finding, about: item.typed || (item.size?.sizeId ?? '') }];
  });
}

function itemFinding(item: ListItem, garment: GarmentOnOffer): Finding | null {
  if (item.size !== null) return offersSize(garment, item.size) ? null : { code: 'sizeGone' };
  const { typed } = item;
  const read = readSize(typed, garment.sizes);
  // A size that came back on offer since it was written is read as soon as the cell is touched; until then it is unclear.
  if (read.ok) return { code: 'sizeAmbiguous', typed, choices: [read.size] };
  if (read.reason === 'ambiguous') return { code: 'sizeAmbiguous', typed, choices: read.choices };
  return { code: read.reason === 'notOffered' ? 'sizeNotOffered' : 'sizeUnknown', typed };
}
