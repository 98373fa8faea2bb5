import type { GarmentOnOffer, ListLine, Spare } from './list';
import { offersSize } from './list';

/** How many of one size of one garment. */
export type ListCount = {
  readonly garmentId: string;
  readonly blankId: string;
  readonly sizeId: string;
  readonly quantity: number;
};

/** How many of each size the people of a list and its spares come to; what no size could be read from counts nowhere. */
export function listCounts(
  lines: readonly Pick<ListLine, 'items'>[],
  spares: readonly Spare[],
  garments: readonly GarmentOnOffer[],
): ListCount[] {
  const counts = new Map<string, ListCount>();
  const add = (garmentId: string, size: { blankId: string; sizeId: string } | null, quantity: number) => {
    const garment = garments.find((each) => each.garmentId === garmentId);
    if (!(garment && size && offersSize(garment, size))) return;
    const key = `${garmentId}\n${size.blankId}\n${size.sizeId}`;
    const { blankId, sizeId } = size;
    counts.set(key, { garmentId, blankId, sizeId, quantity: (counts.get(key)?.quantity ?? 0) + quantity });
  };
  for (const { items } of lines) for (const { garmentId, size, quantity } of items) add(garmentId, size, quantity);
  for (const { garmentId, blankId, sizeId, quantity } of spares) add(garmentId, { blankId, sizeId }, quantity);
  return [...counts.values()];
}

/** How many of one size a count has. */
export function countedOf(
  counts: readonly { blankId: string; sizeId: string; quantity: number }[],
  size: { blankId: string; sizeId: string },
): number {
  return counts
    .filter(({ blankId, sizeId }) => blankId === size.blankId && sizeId === size.sizeId)
    .reduce((sum, { quantity }) => sum + quantity, 0);
}
