import type { AgeBand, GarmentKind } from '../garment/kinds';
import { widthMeasureOf } from '../garment/kinds';
import type { Micrometres } from '../measure/length';
import {
  type Garment,
  type GarmentBlank,
  type GarmentSize,
  type LayoutDocument,
  MOST_SIZE_GROUPS,
  type Print,
  type SizeGroup,
  type SizeKey,
} from './document';
import { readAlike } from './group-readings';
import { keyOf, offeredSizes, sameSize } from './sizes';
import { startingGroups, startingInk } from './starting-groups';

/** Why new sizes cannot be printed where a print is. */
export type GroupingRefusal = {
  /** The print's location does not suit the new sizes, or it has as many size groups as it can have. */
  readonly reason: 'placeDoesNotSuit' | 'tooManyGroups';
  readonly print: Pick<Print, 'name' | 'locationId'>;
};

type GroupedPrint =
  | { readonly ok: true; readonly print: Print }
  | { readonly ok: false; readonly refusal: GroupingRefusal };

type Grouped = {
  readonly kind: GarmentKind;
  readonly ageBand: AgeBand;
  readonly widthUm: Micrometres;
  readonly groupId: string;
};

/**
 * The print with every size of its garments in a size group. A size that is in none joins the group of the size nearest in
 * width of the same kind and age band, so that what the maker set for such garments holds for it too; where there is none
 * it takes the location's starting values for its band, with the cap on a tall picture. Groups stay in the order of their
 * sizes. `newId` names each new group.
 */
export function withNewSizesGrouped(
  { garments }: Pick<LayoutDocument, 'garments'>,
  print: Print,
  newId: () => string,
): GroupedPrint {
  const blanks = blanksUnder(garments, print);
  const known = groupedSizes(blanks, print);
  let groups = print.sizeGroups;
  for (const blank of blanks) {
    const fresh = blank.sizes.filter((size) => !isGrouped(print, { blankId: blank.blankId, sizeId: size.sizeId }));
    if (fresh.length === 0) continue;
    const alike = known.filter(({ kind, ageBand }) => kind === blank.kind && ageBand === blank.ageBand);
    const more =
      alike.length > 0
        ? joinNearest(groups, alike, blank, fresh)
        : joinStarting(groups, print, { ...blank, sizes: fresh }, newId);
    if (!more) return refused('placeDoesNotSuit', print);
    groups = more;
  }
  if (groups.length > MOST_SIZE_GROUPS) return refused('tooManyGroups', print);
  return groups === print.sizeGroups
    ? { ok: true, print }
    : { ok: true, print: { ...print, sizeGroups: inSizeOrder(garments, print, groups) } };
}

function refused(reason: GroupingRefusal['reason'], { name, locationId }: Print): GroupedPrint {
  return { ok: false, refusal: { reason, print: { name, locationId } } };
}

function blanksUnder(garments: readonly Garment[], { garmentIds }: Pick<Print, 'garmentIds'>): GarmentBlank[] {
  return garments.filter(({ garmentId }) => garmentIds.includes(garmentId)).flatMap(({ blanks }) => blanks);
}

function isGrouped({ sizeGroups }: Pick<Print, 'sizeGroups'>, key: SizeKey): boolean {
  return sizeGroups.some(({ members }) => members.some((member) => sameSize(member, key)));
}

function groupedSizes(blanks: readonly GarmentBlank[], { sizeGroups }: Pick<Print, 'sizeGroups'>): Grouped[] {
  return blanks.flatMap(({ blankId, kind, ageBand, sizes }) =>
    sizes.flatMap((size) => {
      const key = { blankId, sizeId: size.sizeId };
      const group = sizeGroups.find(({ members }) => members.some((member) => sameSize(member, key)));
      return group ? [{ kind, ageBand, widthUm: widthOf(kind, size), groupId: group.groupId }] : [];
    }),
  );
}

function widthOf(kind: GarmentKind, { sizeId, measuresUm }: GarmentSize): Micrometres {
  const widthUm = measuresUm[widthMeasureOf(kind)];
  if (widthUm === undefined) throw new Error(`size ${sizeId} has no ${widthMeasureOf(kind)}`);
  return widthUm;
}

function joinNearest(
  groups: readonly SizeGroup[],
  alike: readonly Grouped[],
  { blankId, kind }: Pick<GarmentBlank, 'blankId' | 'kind'>,
  fresh: readonly GarmentSize[],
): SizeGroup[] {
  const joined = fresh.map((size) => {
    const widthUm = widthOf(kind, size);
    const nearest = alike.reduce((best, each) =>
      Math.abs(each.widthUm - widthUm) < Math.abs(best.widthUm - widthUm) ? each : best,
    );
    return { groupId: nearest.groupId, key: { blankId, sizeId: size.sizeId } };
  });
  return groups.map((group) => ({
    ...group,
    members: [...group.members, ...joined.filter(({ groupId }) => groupId === group.groupId).map(({ key }) => key)],
  }));
}

/** One width is one transfer to order: starting values that a group has already are not made a second one. */
function joinStarting(
  groups: readonly SizeGroup[],
  { locationId, content }: Print,
  blank: GarmentBlank,
  newId: () => string,
): SizeGroup[] | null {
  const started = startingGroups(locationId, [{ blanks: [blank] }], startingInk(content), newId);
  if (!started) return null;
  const all = [...groups];
  for (const one of started) {
    const like = all.findIndex((each) => readAlike(each, one));
    const found = all[like];
    if (found) all[like] = { ...found, members: [...found.members, ...one.members] };
    else all.push(one);
  }
  return all;
}

function inSizeOrder(
  garments: readonly Garment[],
  { garmentIds }: Pick<Print, 'garmentIds'>,
  groups: readonly SizeGroup[],
): SizeGroup[] {
  const order = garments
    .filter(({ garmentId }) => garmentIds.includes(garmentId))
    .flatMap((garment) => offeredSizes(garment).map(keyOf));
  const placeOf = (key: SizeKey) => order.findIndex((each) => sameSize(each, key));
  return groups
    .map((group) => ({ ...group, members: group.members.toSorted((a, b) => placeOf(a) - placeOf(b)) }))
    .toSorted((a, b) => firstPlace(a, placeOf) - firstPlace(b, placeOf));
}

function firstPlace({ members }: SizeGroup, placeOf: (key: SizeKey) => number): number {
  const [first] = members;
  return first ? placeOf(first) : Number.POSITIVE_INFINITY;
}
