import type { ArtRef } from '@/lib/domain/art/art-ref';
import type { Garment } from '@/lib/domain/layout/document';
import { LOCATION_IDS, LOCATIONS, type Location, locationsFitting } from '@/lib/domain/layout/locations';
import type { Command, TableState } from '../command';
import { canAddPrint, type NewPrint, withNewPrint } from '../new-print';

/** Lays a picture on the garment at a location, with its starting size and place for every size offered. */
export const addPrint: Command<NewPrint & { readonly art: ArtRef }> = {
  id: 'addPrint',
  keys: [],
  needs: 'garment',
  otherwise: 'tooManyPrints',
  canRun: canAddPrint,
  run: (state, { art, ...print }) => withNewPrint(state, { kind: 'art', art }, print),
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
