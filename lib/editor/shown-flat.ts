import type { FrozenFlat } from '@/lib/domain/garment/flat';
import type { Garment } from '@/lib/domain/layout/document';
import { flatOf } from '@/lib/domain/layout/scene';
import { garmentOf, type OfferedSize, sizeOf } from '@/lib/domain/layout/sizes';
import type { TableState } from './command';

/** The garment that lies on the table, in its size, with the flat of the side that is up. */
export type ShownFlat = { readonly garment: Garment; readonly offered: OfferedSize; readonly flat: FrozenFlat };

/** What lies on the table; null while the job has no garment. */
export function shownFlat({ layout, selection }: Pick<TableState, 'layout' | 'selection'>): ShownFlat | null {
  if (!selection) return null;
  const garment = garmentOf(layout, selection.garmentId);
  const offered = sizeOf(garment, selection.size);
  return { garment, offered, flat: flatOf(offered.blank.kind, offered.size, selection.side) };
}
