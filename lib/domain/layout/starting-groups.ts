import type { ArtRef } from '../art/art-ref';
import type { Micrometres } from '../measure/length';
import type { Garment, SizeGroup, SizeKey } from './document';
import { type LocationId, startingValues } from './locations';
import { inkHeightUm, widthForHeightUm } from './placement';
import { type StartingValues, WIDE_FROM_CHEST_UM } from './starting-values';

/**
 * Size groups a print starts with at a location: one for each set of starting values that age bands and kinds ask for,
 * and one more where wider garments start further across. `newId` names each group. Null when the location does not suit one of the garments.
 */
export function startingGroups(
  locationId: LocationId,
  garments: readonly Pick<Garment, 'blanks'>[],
  art: Pick<ArtRef, 'inkBox'>,
  newId: () => string,
): SizeGroup[] | null {
  const bands = new Map<string, { values: StartingValues; acrossUm: number; members: SizeKey[] }>();
  for (const blank of garments.flatMap(({ blanks }) => blanks)) {
    const values = startingValues(locationId, blank);
    if (!values) return null;
    for (const size of blank.sizes) {
      const acrossUm = startingAcross(values, size.measuresUm.chestWidth);
      const key = [values.widthUm, values.tallestUm, values.dropUm, acrossUm].join('/');
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

/** How far across a print starts on a garment of this chest width: further on wide ones, where the location says so. */
export function startingAcross(values: StartingValues, chestUm: Micrometres | undefined): Micrometres {
  const isWide = chestUm !== undefined && chestUm >= WIDE_FROM_CHEST_UM;
  return isWide ? (values.wideAcrossUm ?? values.acrossUm) : values.acrossUm;
}
