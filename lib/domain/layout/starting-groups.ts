import type { ArtRef } from '../art/art-ref';
import type { AgeBand } from '../garment/kinds';
import type { Lettering } from '../lettering/lettering';
import type { Micrometres } from '../measure/length';
import type { Garment, PrintContent, SizeGroup, SizeKey } from './document';
import { type LocationId, startingValues } from './locations';
import { inkHeightUm, widthForHeightUm } from './placement';
import { startingLettersUm } from './starting-letters';
import { type StartingValues, WIDE_FROM_CHEST_UM } from './starting-values';

/** What a print that starts somewhere shows: a picture, of which only its proportions matter, or lettering. */
export type StartingInk = Pick<ArtRef, 'inkBox'> | Pick<Lettering, 'lines' | 'lineGapPercent'>;

/** What a print shows, as its starting size needs it. */
export function startingInk(content: PrintContent): StartingInk {
  return content.kind === 'art' ? content.art : content.lettering;
}

/**
 * Size groups a print starts with at a location: one for each set of starting values that age bands and kinds ask for,
 * and one more where wider garments start further across. Lettering may start as wide as a picture would, at the usual
 * letter height. `newId` names each group. Null when the location does not suit one of the garments.
 */
export function startingGroups(
  locationId: LocationId,
  garments: readonly Pick<Garment, 'blanks'>[],
  ink: StartingInk,
  newId: () => string,
): SizeGroup[] | null {
  const bands = new Map<string, { size: StartingSize; dropUm: number; acrossUm: number; members: SizeKey[] }>();
  for (const blank of garments.flatMap(({ blanks }) => blanks)) {
    const values = startingValues(locationId, blank);
    if (!values) return null;
    const size = startingSize(ink, locationId, blank.ageBand, values);
    for (const { sizeId, measuresUm } of blank.sizes) {
      const acrossUm = startingAcross(values, measuresUm.chestWidth);
      const key = [values.widthUm, values.tallestUm, size.capHeightUm, values.dropUm, acrossUm].join('/');
      const band = bands.get(key) ?? { size, dropUm: values.dropUm, acrossUm, members: [] };
      band.members.push({ blankId: blank.blankId, sizeId });
      bands.set(key, band);
    }
  }
  return [...bands.values()].map(({ size: { widthUm, ...letters }, dropUm, acrossUm, members }) => ({
    groupId: newId(),
    members,
    widthUm,
    dropUm,
    acrossUm,
    ...letters,
  }));
}

type StartingSize = Pick<SizeGroup, 'widthUm' | 'capHeightUm'>;

/** The usual width, or less for a picture so tall that it would run down the garment. */
function startingSize(
  ink: StartingInk,
  locationId: LocationId,
  ageBand: AgeBand,
  values: StartingValues,
): StartingSize {
  const { widthUm, tallestUm } = values;
  if (!('inkBox' in ink)) return { widthUm, capHeightUm: startingLettersUm(locationId, ageBand, ink, values) };
  return { widthUm: inkHeightUm(ink, widthUm) > tallestUm ? widthForHeightUm(ink, tallestUm) : widthUm };
}

/** How far across a print starts on a garment of this chest width: further on wide ones, where the location says so. */
export function startingAcross(values: StartingValues, chestUm: Micrometres | undefined): Micrometres {
  const isWide = chestUm !== undefined && chestUm >= WIDE_FROM_CHEST_UM;
  return isWide ? (values.wideAcrossUm ?? values.acrossUm) : values.acrossUm;
}
