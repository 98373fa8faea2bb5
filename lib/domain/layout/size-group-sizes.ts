import { type AgeBand, widthMeasureOf } from '../garment/kinds';
import { type LengthUnit, type Micrometres, tradeStepUm } from '../measure/length';
import type { LayoutDocument, Print, SizeKey } from './document';
import { isClear } from './fit';
import { lettersOf } from './group-readings';
import { suggestionStepUm } from './layout-fit';
import { startingValues } from './locations';
import { placeAt } from './placement';
import { flatOf } from './scene';
import { garmentOf, groupFor, keyOf, type OfferedSize, offeredSizes, sameSize, sizesToShow } from './sizes';
import { startingAcross } from './starting-groups';
import type { SetType } from './type-case';

/** Where a print goes on one size, whatever its width. */
export type Place = { readonly dropUm: Micrometres; readonly acrossUm: Micrometres };

/** One size a print is on, as suggesting its size groups needs it. */
export type GroupedSize = {
  readonly key: SizeKey;
  readonly ageBand: AgeBand;
  /** Chest, thigh or panel width of the garment lying flat. */
  readonly girthUm: Micrometres;
  readonly isOrdered: boolean;
  readonly place: Place;
  /** The width that keeps the print's share of the garment, in whole steps; less where that has a finding. */
  readonly ownWidthUm: Micrometres;
  /** Whether a width has no finding on it. Where every width has one, that is no reason to prefer any: all do. */
  readonly takes: (widthUm: Micrometres) => boolean;
};

/** The least a print is made smaller to fit: a quarter of the width that would keep its share. */
const LEAST_SHARE = 1 / 4;

/**
 * Every size a print is on with the width and place that would make it look there as it looks on `anchor`, whose present
 * width, drop and across all others follow. Null when the print is not on that size.
 */
export function groupedSizes(
  layout: Pick<LayoutDocument, 'garments'>,
  print: Print,
  {
    unit,
    anchor,
    setType,
  }: { readonly unit: LengthUnit; readonly anchor: SizeKey; readonly setType?: SetType | undefined },
): { readonly anchor: GroupedSize; readonly sizes: readonly GroupedSize[] } | null {
  const listed = print.garmentIds.flatMap((garmentId) => {
    const garment = garmentOf(layout, garmentId);
    const ordered = sizesToShow(garment).map(keyOf);
    return offeredSizes(garment).map((offered) => ({
      offered,
      isOrdered: ordered.some((key) => sameSize(key, keyOf(offered))),
    }));
  });
  const from = listed.find(({ offered }) => sameSize(keyOf(offered), anchor))?.offered;
  if (!from) return null;
  const present = groupFor(print, anchor);
  const stepUm = suggestionStepUm(unit);
  const takesOn = fitsOn(print, from, setType);
  const anchorPlace = { dropUm: present.dropUm, acrossUm: present.acrossUm };
  const anchorWidthUm = takesOn(anchorPlace)(present.widthUm)
    ? present.widthUm
    : (widestThat(takesOn(anchorPlace), present.widthUm, stepUm, 'down') ?? present.widthUm);
  const sizes = listed.map(({ offered, isOrdered }): GroupedSize => {
    const girthUm = girthOf(offered);
    const idealUm = (anchorWidthUm * girthUm) / girthOf(from);
    const takesAt = fitsOn(print, offered, setType);
    const isAnchor = offered === from;
    const places = isAnchor ? [anchorPlace] : placesOn(print, offered, { offered: from, ...anchorPlace }, unit);
    const tried = places.map((place) => {
      const takes = takesAt(place);
      return { place, takes, ownWidthUm: isAnchor ? anchorWidthUm : widestThat(takes, idealUm, stepUm, 'nearest') };
    });
    const about = { key: keyOf(offered), ageBand: offered.blank.ageBand, girthUm, isOrdered };
    for (const { place, takes, ownWidthUm } of tried) {
      if (ownWidthUm !== null && takes(ownWidthUm)) return { ...about, place, takes, ownWidthUm };
    }
    const ownWidthUm = isAnchor ? anchorWidthUm : Math.max(stepUm, stepped(idealUm, stepUm));
    return { ...about, place: places[0] ?? anchorPlace, takes: () => true, ownWidthUm };
  });
  const self = sizes.find(({ key }) => sameSize(key, anchor));
  return self ? { anchor: self, sizes } : null;
}

function girthOf({ blank, size }: OfferedSize): Micrometres {
  const girthUm = size.measuresUm[widthMeasureOf(blank.kind)];
  if (girthUm === undefined) throw new Error(`size ${size.sizeId} has no ${widthMeasureOf(blank.kind)}`);
  return girthUm;
}

/** Whether widths fit on a size at a place; each is looked at once. */
function fitsOn(
  print: Print,
  { blank, size }: OfferedSize,
  setType: SetType | undefined,
): (place: Place) => (widthUm: Micrometres) => boolean {
  const flat = flatOf(blank.kind, size, print.side);
  const { locationId } = print;
  const letters = lettersOf(groupFor(print, keyOf({ blank, size })));
  return (place) => {
    const known = new Map<Micrometres, boolean>();
    return (widthUm) => {
      const already = known.get(widthUm);
      if (already !== undefined) return already;
      const placed = placeAt(print, { widthUm, ...place, ...letters }, flat, setType);
      const fits = isClear(placed, flat, { locationId, cutToleranceUm: blank.cutToleranceUm });
      known.set(widthUm, fits);
      return fits;
    };
  };
}

/** The widest width in whole steps that fits and is no wider than the ideal (or the step nearest to it); null when none is. */
function widestThat(
  takes: (widthUm: Micrometres) => boolean,
  idealUm: number,
  stepUm: Micrometres,
  rounded: 'down' | 'nearest',
): Micrometres | null {
  const from = (rounded === 'down' ? Math.floor(idealUm / stepUm) : Math.round(idealUm / stepUm)) * stepUm;
  for (let widthUm = Math.max(stepUm, from); widthUm >= idealUm * LEAST_SHARE && widthUm > 0; widthUm -= stepUm) {
    if (takes(widthUm)) return widthUm;
  }
  return null;
}

/**
 * Where the print goes on another size: as far from its location's usual place there as it is on the anchor, less on small
 * garments by as much as prints are smaller there; then, should it fit nowhere so, the usual place itself. A print that
 * keeps under another keeps the drop that one gives it.
 */
function placesOn(
  print: Print,
  offered: OfferedSize,
  anchor: Place & { readonly offered: OfferedSize },
  unit: LengthUnit,
): Place[] {
  const present = groupFor(print, keyOf(offered));
  const usual = usualOn(print, offered);
  const there = usualOn(print, anchor.offered);
  if (!(usual && there)) return [{ dropUm: present.dropUm, acrossUm: present.acrossUm }];
  const share = Math.min(1, usual.widthUm / there.widthUm);
  const followed = (usualUm: Micrometres, wasUm: Micrometres, isUm: Micrometres) =>
    usualUm === wasUm && share === 1 ? isUm : stepped(usualUm + (isUm - wasUm) * share, tradeStepUm(unit));
  const acrossUm = followed(usual.acrossUm, there.acrossUm, anchor.acrossUm);
  if (print.below) return [{ dropUm: present.dropUm, acrossUm }];
  const dropUm = followed(usual.dropUm, there.dropUm, anchor.dropUm);
  return [
    { dropUm, acrossUm },
    { dropUm: usual.dropUm, acrossUm: usual.acrossUm },
  ];
}

function usualOn({ locationId }: Print, { blank, size }: OfferedSize) {
  const values = startingValues(locationId, blank);
  return values && { ...values, acrossUm: startingAcross(values, size.measuresUm.chestWidth) };
}

function stepped(um: number, stepUm: Micrometres): Micrometres {
  return Math.sign(um) * Math.round(Math.abs(um) / stepUm) * stepUm + 0;
}
