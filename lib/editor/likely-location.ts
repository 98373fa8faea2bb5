import type { LocationId } from '@/lib/domain/layout/locations';
import type { TableState } from './command';
import { locationsOffered } from './commands/add-print';

/** Where a picture goes most often, by side (common practice, no source). */
const USUAL: readonly LocationId[] = ['fullFront', 'leftChest', 'fullBack', 'backNeck'];

/**
 * Where the next picture most likely goes: a usual location of the side that is up that has no print yet, then any usual
 * one, then any at all. Null where the garment offers no location.
 */
export function likelyLocation({ layout, selection }: Pick<TableState, 'layout' | 'selection'>): LocationId | null {
  if (!selection) return null;
  const offered = locationsOffered({ layout, selection });
  const taken = layout.prints
    .filter(({ garmentIds }) => garmentIds.includes(selection.garmentId))
    .map(({ locationId }) => locationId);
  const usual = USUAL.flatMap((id) => offered.filter((location) => location.id === id));
  const here = usual.filter(({ side }) => side === selection.side);
  const choices = [...here.filter(({ id }) => !taken.includes(id)), ...here, ...usual, ...offered];
  return choices[0]?.id ?? null;
}
