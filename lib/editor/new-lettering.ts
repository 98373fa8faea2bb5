import { relativeLuminance } from '@/lib/domain/garment/cloth-colours';
import type { LocationId } from '@/lib/domain/layout/locations';
import { type FontRef, type Lettering, SQUEEZE_FLOOR_PERCENT } from '@/lib/domain/lettering/lettering';
import { fieldMark } from '@/lib/domain/lettering/lettering-text';
import type { People } from '@/lib/domain/people/person';
import type { TableState } from './command';
import { locationsOffered } from './commands/add-print';

/** Columns that a list of people has before anybody added others. */
export const NAME_COLUMN = 'name';
export const NUMBER_COLUMN = 'number';

/** Where numbers go. */
const NUMBER_PLACES: readonly LocationId[] = ['frontNumber', 'backNumber'];

/** Luminance of cloth above which letters are dark on it (by eye). */
const LIGHT_CLOTH = 0.3;
const ON_LIGHT = '#24222B';
const ON_DARK = '#FFFFFF';

/** The lettering that is offered for a place: a number where numbers go, otherwise a name; in a colour that shows on the cloth. */
export function newLettering(locationId: LocationId, font: FontRef, clothHex: string): Lettering {
  const columnId = NUMBER_PLACES.includes(locationId) ? NUMBER_COLUMN : NAME_COLUMN;
  return {
    lines: [fieldMark(columnId)],
    font,
    hex: relativeLuminance(clothHex) > LIGHT_CLOTH ? ON_LIGHT : ON_DARK,
    outline: null,
    trackingPermille: 0,
    letterCase: 'upper',
    align: 'centre',
    archPercent: 0,
    lineGapPercent: 40,
    squeezeFloorPercent: SQUEEZE_FLOOR_PERCENT,
  };
}

/** The columns that a line can take a word from: the list's own, or name and number while it has none. */
export function columnsOffered(
  { columns }: Pick<People, 'columns'>,
  unnamed: { readonly name: string; readonly number: string },
) {
  if (columns.length > 0) return columns;
  return [
    { columnId: NAME_COLUMN, name: unnamed.name },
    { columnId: NUMBER_COLUMN, name: unnamed.number },
  ];
}

/** Where lettering goes most often: a name on the upper back, then a number under it, then a number on the front (common practice, no source). */
const USUAL: readonly LocationId[] = ['upperBack', 'backNumber', 'frontNumber', 'fullFront'];

/** Where the next lettering most likely goes; null where the garment offers no location. */
export function likelyLetteringLocation({
  layout,
  selection,
}: Pick<TableState, 'layout' | 'selection'>): LocationId | null {
  if (!selection) return null;
  const offered = locationsOffered({ layout, selection });
  const lettered = layout.prints
    .filter(({ garmentIds, content }) => content.kind === 'lettering' && garmentIds.includes(selection.garmentId))
    .map(({ locationId }) => locationId);
  const usual = USUAL.flatMap((id) => offered.filter((location) => location.id === id));
  const free = usual.filter(({ id }) => !lettered.includes(id));
  return (free[0] ?? usual[0] ?? offered[0])?.id ?? null;
}
