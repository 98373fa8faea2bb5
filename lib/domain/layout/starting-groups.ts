import type { ArtRef } from '../art/art-ref';
import type { Garment, GarmentBlank, SizeGroup, SizeKey } from './document';
import { LOCATIONS, type Location, type LocationId, type StartingValues } from './locations';
import { inkHeightUm, widthForHeightUm } from './placement';

/**
 * Size groups a print starts with at a location: one for each age band of the garments, and one more where wider
 * garments start further across. `newId` names each group. Null when the location does not suit one of the bands.
 */
export function startingGroups(
  locationId: LocationId,
  garments: readonly Pick<Garment, 'blanks'>[],
  art: Pick<ArtRef, 'inkBox'>,
  newId: () => string,
): SizeGroup[] | null {
  const location = LOCATIONS[locationId];
  const bands = new Map<string, { values: StartingValues; acrossUm: number; members: SizeKey[] }>();
  for (const blank of garments.flatMap(({ blanks }) => blanks)) {
    const values = location.starting[blank.ageBand];
    if (!values) return null;
    for (const size of blank.sizes) {
      const acrossUm = startingAcross(location, values, size.measuresUm.chestWidth);
      const key = `${blank.ageBand}/${acrossUm}`;
      const band = bands.get(key) ?? { values, acrossUm, members: [] };
      band.members.push({ blankId: blank.blankId, sizeId: size.sizeId });
      bands.set(key, band);
    }
  }
  return [...bands.values()].map(({ values, acrossUm, members }) => ({
    groupId: newId(),
    members,
    widthUm: startingWidth(art, values),
    dropUm: values.dropUm,
    acrossUm,
  }));
}

/** The usual width, or less for a picture so tall that it would run down the garment. */
function startingWidth(art: Pick<ArtRef, 'inkBox'>, { widthUm, tallestUm }: StartingValues): number {
  return inkHeightUm(art, widthUm) > tallestUm ? widthForHeightUm(art, tallestUm) : widthUm;
}

function startingAcross(
  location: Location,
  values: StartingValues,
  chestUm: GarmentBlank['sizes'][number]['measuresUm']['chestWidth'],
): number {
  return location.wide && chestUm >= location.wide.fromChestUm ? location.wide.acrossUm : values.acrossUm;
}
