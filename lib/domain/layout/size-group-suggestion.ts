import type { LengthUnit, Micrometres } from '../measure/length';
import { type LayoutDocument, MOST_SIZE_GROUPS, type Print, type SizeGroup, type SizeKey } from './document';
import { lettersOf } from './group-readings';
import { suggestionStepUm } from './layout-fit';
import { type WidthBand, widthBands } from './size-group-bands';
import { type GroupedSize, groupedSizes } from './size-group-sizes';
import { groupFor, sameSize } from './sizes';
import type { SetType } from './type-case';

/** Widths suggested where nothing else is asked for: each is another transfer to order (common practice, no source). */
export const USUAL_WIDTHS = 3;

/** A size group without its name. */
export type SuggestedGroup = Omit<SizeGroup, 'groupId'>;

/** Size groups for a print, and what they cost. */
export type GroupSuggestion = {
  /** Every size of the print's garments in exactly one, in the order the sizes are listed. */
  readonly groups: readonly SuggestedGroup[];
  /** The widths that ordered sizes get, narrowest first: so many different transfers to order. */
  readonly widthsUm: readonly Micrometres[];
};

/**
 * Size groups that make a print look alike on every size: each width keeps the share of the garment's width it has on the
 * size `anchor`, in steps of 1/4 in or 5 mm, narrower where that has a finding. What is set on the anchor stays as it is
 * there, unless it does not fit. Three widths by default; see `widthBands` for when fewer or more. Sizes that share a width
 * and want another drop or distance across (a youth's under an adult's) get a group of their own, which is no further
 * transfer. Sizes nobody ordered join the nearest width that fits on them. Null when the print is not on the anchor, or when it would
 * take more groups than a print can have.
 */
export function suggestedSizeGroups(
  print: Print,
  layout: Pick<LayoutDocument, 'garments'>,
  {
    unit,
    anchor,
    count = USUAL_WIDTHS,
    setType,
  }: {
    readonly unit: LengthUnit;
    readonly anchor: SizeKey;
    readonly count?: number;
    readonly setType?: SetType | undefined;
  },
): GroupSuggestion | null {
  const grouped = groupedSizes(layout, print, { unit, anchor, setType });
  if (!grouped) return null;
  // The size in hand counts as ordered: it is what the maker looks at.
  const ordered = grouped.sizes.filter((size) => size.isOrdered || size === grouped.anchor);
  const bands = widthBands(ordered, grouped.anchor, { count, stepUm: suggestionStepUm(unit) });
  const widthOn = (size: GroupedSize) => bandFor(size, bands).widthUm;
  const groups = groupsReadAlike(
    grouped.sizes.map((size) => ({
      members: [size.key],
      widthUm: widthOn(size),
      ...size.place,
      ...lettersOf(groupFor(print, size.key)),
    })),
  );
  if (groups.length > MOST_SIZE_GROUPS) return null;
  const widths = new Set(grouped.sizes.filter(({ isOrdered }) => isOrdered).map(widthOn));
  return { groups, widthsUm: [...widths].sort((a, b) => a - b) };
}

/** The groups with those that read the same put together, each where the first of them was. */
export function groupsReadAlike<Group extends SuggestedGroup>(groups: readonly Group[]): Group[] {
  const alike = new Map<string, Group>();
  for (const group of groups) {
    const key = `${group.widthUm}/${group.dropUm}/${group.acrossUm}/${group.capHeightUm}`;
    const known = alike.get(key);
    alike.set(key, known ? { ...known, members: [...known.members, ...group.members] } : group);
  }
  return [...alike.values()];
}

/** Whether a print's groups are the suggested ones already, whatever their names and order. */
export function isGroupedSo({ sizeGroups }: Pick<Print, 'sizeGroups'>, { groups }: GroupSuggestion): boolean {
  const present = groupsReadAlike(sizeGroups);
  return groups.every(({ members, widthUm, dropUm, acrossUm }) => {
    const like = present.find((each) => members.some((key) => each.members.some((member) => sameSize(member, key))));
    return (
      like?.widthUm === widthUm &&
      like.dropUm === dropUm &&
      like.acrossUm === acrossUm &&
      members.every((key) => like.members.some((member) => sameSize(member, key)))
    );
  });
}

/** The print in the suggested groups. The one with the anchor keeps that one's name, the others get new ones. */
export function withGroups(print: Print, { groups }: GroupSuggestion, anchor: SizeKey, newId: () => string): Print {
  const kept = print.sizeGroups.find(({ members }) => members.some((member) => sameSize(member, anchor)));
  return {
    ...print,
    sizeGroups: groups.map((group) => {
      const hasAnchor = group.members.some((member) => sameSize(member, anchor));
      return { groupId: hasAnchor && kept ? kept.groupId : newId(), ...group, members: [...group.members] };
    }),
  };
}

/** The print at one width on every size, drops and distances across as they are; groups that then read the same are one. */
export function withOneWidth(print: Print, widthUm: Micrometres): Print {
  return { ...print, sizeGroups: groupsReadAlike(print.sizeGroups.map((group) => ({ ...group, widthUm }))) };
}

/** The widths of the groups that hold any of these sizes, narrowest first: so many different transfers to order. */
export function widthsOn({ sizeGroups }: Pick<Print, 'sizeGroups'>, sizes: readonly SizeKey[]): Micrometres[] {
  const held = sizeGroups.filter(({ members }) => members.some((each) => sizes.some((size) => sameSize(size, each))));
  return [...new Set(held.map(({ widthUm }) => widthUm))].sort((a, b) => a - b);
}

/**
 * The band a size is in. For one nobody ordered: the nearest in width among those whose width has no finding on it, of its
 * own age band where that has any such; where all have one, the nearest.
 */
function bandFor(size: GroupedSize, bands: readonly WidthBand[]): WidthBand {
  const own = bands.find(({ sizes }) => sizes.includes(size));
  if (own) return own;
  const clear = bands.filter(({ widthUm }) => size.takes(widthUm));
  const kinOf = (some: readonly WidthBand[]) =>
    some.filter(({ sizes }) => sizes.some(({ ageBand }) => ageBand === size.ageBand));
  const [first, ...rest] = [kinOf(clear), clear, kinOf(bands), bands].find(({ length }) => length > 0) ?? [];
  if (!first) throw new Error('no bands');
  return rest.reduce((near, each) => (apart(size, each) < apart(size, near) ? each : near), first);
}

function apart({ girthUm }: GroupedSize, { sizes }: WidthBand): number {
  return Math.min(...sizes.map((each) => Math.abs(each.girthUm - girthUm)));
}
