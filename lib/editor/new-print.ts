import type { PrintContent } from '@/lib/domain/layout/document';
import { startingPrintOf } from '@/lib/domain/layout/garment-edits';
import { LOCATIONS, type LocationId } from '@/lib/domain/layout/locations';
import type { TableState } from './command';
import { MOST_PRINTS } from './print-limits';
import { printName } from './print-name';

/** What a new print is called and where it goes on the garment shown. */
export type NewPrint = {
  readonly printId: string;
  readonly name: string;
  readonly locationId: LocationId;
  /** A fresh id for each size group. */
  readonly newId: () => string;
};

/** Whether one more print can be laid on the garment shown. */
export function canAddPrint({ layout, selection, locked }: TableState): boolean {
  return !locked && selection !== null && layout.prints.length < MOST_PRINTS;
}

/**
 * The layout with a new print on the garment shown, on top of the others, at its location's starting size and place for
 * every size offered; the very same layout where the location does not suit the garment.
 */
export function withNewPrint(
  { layout, selection }: Pick<TableState, 'layout' | 'selection'>,
  content: PrintContent,
  { printId, name, locationId, newId }: NewPrint,
): TableState['layout'] {
  const print = startingPrintOf(layout, content, {
    printId,
    name: printName(name) ?? LOCATIONS[locationId].id,
    garmentIds: selection ? [selection.garmentId] : [],
    locationId,
    newId,
  });
  return print ? { ...layout, prints: [...layout.prints, print] } : layout;
}
