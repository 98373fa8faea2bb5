import type { ArtRef } from '../art/art-ref';
import type { StarterChart } from '../garment/chart/chart';
import { blankFromStyle, styleOfChart } from './blank-from-style';
import type {
  Cloth,
  Garment,
  GarmentBlank,
  LayoutDocument,
  Print,
  PrintContent,
  SizeCount,
  SizeGroup,
  SizeKey,
} from './document';
import { withGarment, withoutMembers } from './garment-members';
import type { LocationId } from './locations';
import { LOCATIONS } from './locations';
import { keyOf, offeredSizes, sameSize } from './sizes';
import { startingGroups, startingInk } from './starting-groups';

/** A blank as a layout holds it, with every measure resolved, from a starter chart. Throws when the chart's measures cannot be. */
export function blankFromChart(chart: StarterChart, blankId: string, name: string, fabric: string): GarmentBlank {
  const made = blankFromStyle(styleOfChart(chart, { name, fabric }), { blankId });
  if (!made.ok) throw new Error(`chart ${chart.id}: ${JSON.stringify(made.refusal)}`);
  return made.blank;
}

/** The layout with one more garment. Prints stay on the garments they were on. */
export function addGarment(layout: LayoutDocument, garment: Garment): LayoutDocument {
  return { ...layout, garments: [...layout.garments, garment] };
}

/** The layout without a garment, without the prints that were on no other, and without its sizes in the groups of those that were. */
export function removeGarment(layout: LayoutDocument, garmentId: string): LayoutDocument {
  const gone = layout.garments.find((garment) => garment.garmentId === garmentId);
  const blankIds = new Set(gone?.blanks.map(({ blankId }) => blankId));
  const left = withoutMembers(layout, ({ blankId }) => blankIds.has(blankId));
  return {
    ...left,
    garments: layout.garments.filter((garment) => garment.garmentId !== garmentId),
    prints: left.prints
      .map((print) => ({ ...print, garmentIds: print.garmentIds.filter((id) => id !== garmentId) }))
      .filter(({ garmentIds }) => garmentIds.length > 0),
  };
}

/** The layout with a garment's counts replaced; zeros are dropped. Throws for a size the garment does not offer. */
export function setCounts(layout: LayoutDocument, garmentId: string, counts: readonly SizeCount[]): LayoutDocument {
  return withGarment(layout, garmentId, (garment) => {
    for (const count of counts) {
      if (!offeredSizes(garment).some((offered) => sameSize(keyOf(offered), count))) {
        throw new Error(`${garment.name} has no size ${count.blankId}/${count.sizeId}`);
      }
    }
    return { ...garment, counts: counts.filter(({ quantity }) => quantity > 0) };
  });
}

/** The layout with a garment renamed or in another cloth. */
export function restyleGarment(
  layout: LayoutDocument,
  garmentId: string,
  style: { name: string; cloth: Cloth },
): LayoutDocument {
  return withGarment(layout, garmentId, (garment) => ({ ...garment, ...style }));
}

/** A new print of a picture at a location, with starting values for every size; null where the location does not suit a garment. */
export function startingPrint(
  layout: Pick<LayoutDocument, 'garments'>,
  art: ArtRef,
  place: StartingPlace,
): Print | null {
  return startingPrintOf(layout, { kind: 'art', art }, place);
}

/** What a new print is called and where it goes. */
export type StartingPlace = {
  readonly printId: string;
  readonly name: string;
  readonly garmentIds: string[];
  readonly locationId: LocationId;
  readonly newId: () => string;
};

/** The same of anything a print can show. */
export function startingPrintOf(
  layout: Pick<LayoutDocument, 'garments'>,
  content: PrintContent,
  { printId, name, garmentIds, locationId, newId }: StartingPlace,
): Print | null {
  const garments = layout.garments.filter(({ garmentId }) => garmentIds.includes(garmentId));
  const sizeGroups = startingGroups(locationId, garments, startingInk(content), newId);
  if (!sizeGroups || sizeGroups.length === 0) return null;
  return {
    printId,
    name,
    garmentIds,
    side: LOCATIONS[locationId].side,
    locationId,
    content,
    turnCentideg: 0,
    sizeGroups,
  };
}

/** Sizes of the printed garments that no size group of the print holds: always empty in a whole layout. */
export function sizesWithoutGroup(
  layout: Pick<LayoutDocument, 'garments'>,
  print: Pick<Print, 'garmentIds' | 'sizeGroups'>,
): SizeKey[] {
  return layout.garments
    .filter(({ garmentId }) => print.garmentIds.includes(garmentId))
    .flatMap((garment) => offeredSizes(garment).map(keyOf))
    .filter(
      (key) => !print.sizeGroups.some(({ members }: SizeGroup) => members.some((member) => sameSize(member, key))),
    );
}
