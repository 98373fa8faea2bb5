import type { ArtRef } from '@/lib/domain/art/art-ref';
import type { Garment } from '@/lib/domain/layout/document';
import { startingPrint } from '@/lib/domain/layout/garment-edits';
import {
  LOCATION_IDS,
  LOCATIONS,
  type Location,
  type LocationId,
  locationsFitting,
} from '@/lib/domain/layout/locations';
import type { Command, TableState } from '../command';
import { MOST_PRINTS } from '../print-limits';
import { printName } from '../print-name';

type AddPrint = {
  readonly printId: string;
  readonly name: string;
  readonly art: ArtRef;
  readonly locationId: LocationId;
  /** A fresh id for each size group. */
  readonly newId: () => string;
};

/** Lays a picture on the garment at a location, with its starting size and place for every size offered. */
export const addPrint: Command<AddPrint> = {
  id: 'addPrint',
  keys: [],
  needs: 'garment',
  otherwise: 'tooManyPrints',
  canRun: ({ layout, selection, locked }) => !locked && selection !== null && layout.prints.length < MOST_PRINTS,
  run: (state, { printId, name, art, locationId, newId }) => {
    const print = startingPrint(state.layout, art, {
      printId,
      name: printName(name) ?? LOCATIONS[locationId].id,
      garmentIds: state.selection ? [state.selection.garmentId] : [],
      locationId,
      newId,
    });
    return print ? { ...state.layout, prints: [...state.layout.prints, print] } : state.layout;
  },
};

/** The locations a picture can go to on the garment shown: those with starting values for every blank under it, front first. */
export function locationsOffered({ layout, selection }: Pick<TableState, 'layout' | 'selection'>): Location[] {
  const garment = layout.garments.find(({ garmentId }) => garmentId === selection?.garmentId);
  return garment ? locationsFor([garment]) : [];
}

/** The locations that suit all these garments, front first. */
export function locationsFor(garments: readonly Pick<Garment, 'blanks'>[]): Location[] {
  const blanks = garments.flatMap((garment) => garment.blanks);
  const sides = new Set(LOCATION_IDS.map((id) => LOCATIONS[id].side));
  return [...sides].flatMap((side) => locationsFitting(side, blanks));
}
