import { starterChart } from '@/lib/domain/garment/starter-charts';
import { blankFromStyle, styleOfChart } from '@/lib/domain/layout/blank-from-style';
import { emptyLayout, type GarmentBlank, type LayoutDocument, type SizeKey } from '@/lib/domain/layout/document';
import { addGarment, startingPrint } from '@/lib/domain/layout/garment-edits';
import type { LocationId } from '@/lib/domain/layout/locations';
import { groupFor } from '@/lib/domain/layout/sizes';
import { LEAF } from './sample-layout';

let last = 0;

/** A fresh id. */
export function newId(): string {
  last += 1;
  return `made-${last}`;
}

/** A starter chart's blank, under an id of its own or one given; as if of the shop's list where `shopBlankId` says so. */
export function hung(chartId: string, ids: Partial<Pick<GarmentBlank, 'blankId' | 'shopBlankId'>> = {}): GarmentBlank {
  const chart = starterChart(chartId);
  if (!chart) throw new Error(`no chart ${chartId}`);
  const made = blankFromStyle(styleOfChart(chart, { name: chartId, fabric: 'Cotton' }), {
    blankId: ids.blankId ?? newId(),
    shopBlankId: ids.shopBlankId,
  });
  if (!made.ok) throw new Error(made.refusal.reason);
  return made.blank;
}

/** A garment over these blanks. */
export function withHung(layout: LayoutDocument, garmentId: string, ...blanks: GarmentBlank[]): LayoutDocument {
  const cloth = { name: 'Navy', hex: '#20344F', heather: false };
  return addGarment(layout, { garmentId, name: garmentId, cloth, blanks, counts: [] });
}

/** A layout of one garment, called `tee`. */
export function oneGarment(...blanks: GarmentBlank[]): LayoutDocument {
  return withHung(emptyLayout('Placed by hand.'), 'tee', ...blanks);
}

/** The layout with the leaf printed at a location of some garments; the same where it does not suit them. */
export function printed(
  layout: LayoutDocument,
  locationId: LocationId,
  garmentIds: string[] = ['tee'],
  art = LEAF,
): LayoutDocument {
  const print = startingPrint(layout, art, { printId: newId(), name: 'Leaf', garmentIds, locationId, newId });
  return print ? { ...layout, prints: [...layout.prints, print] } : layout;
}

/** The readings of the first print on one size. */
export function readingsOn(layout: LayoutDocument, key: SizeKey) {
  const [print] = layout.prints;
  if (!print) throw new Error('nothing is printed');
  const { widthUm, dropUm, acrossUm } = groupFor(print, key);
  return { widthUm, dropUm, acrossUm };
}
