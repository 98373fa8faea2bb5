import type { Side } from '../garment/flat';
import { type LengthUnit, type Micrometres, UM_PER_INCH, UM_PER_MM } from '../measure/length';
import type { LayoutDocument, Print, SizeGroup, SizeKey } from './document';
import { type FitFinding, type FitKind, fitOnSize, isClear } from './fit';
import { flatOf, placedPrint, printsOn } from './scene';
import { garmentOf, groupFor, keyOf, type OfferedSize, sameSize, sizesToShow } from './sizes';
import type { SetType } from './type-case';

/** How one print fits one ordered size. */
export type SizeFit = {
  readonly garmentId: string;
  readonly offered: OfferedSize;
  readonly findings: readonly FitFinding[];
};

/** What cannot be pressed as it lies: it stops a revision unless the maker says why. */
const STOPPING: ReadonlySet<FitKind> = new Set<FitKind>(['offGarment', 'crossesSeam', 'widerThanArmholes']);

/** True for a finding that stops a revision from being sent without a reason. */
export function isStopping({ kind }: Pick<FitFinding, 'kind'>): boolean {
  return STOPPING.has(kind);
}

/**
 * How a print fits every ordered size of the garments it is on, garment by garment, smallest listed first. Of lettering it
 * is the longest of the list that has to fit: see `TypeCase`.
 */
export function printFit(layout: Pick<LayoutDocument, 'garments'>, print: Print, setType?: SetType): SizeFit[] {
  return print.garmentIds.flatMap((garmentId) =>
    sizesToShow(garmentOf(layout, garmentId)).map((offered) => sizeFit(garmentId, offered, print, setType)),
  );
}

function sizeFit(garmentId: string, offered: OfferedSize, print: Print, setType?: SetType): SizeFit {
  const flat = flatOf(offered.blank.kind, offered.size, print.side);
  const placed = placedPrint(print, keyOf(offered), flat, setType);
  return {
    garmentId,
    offered,
    findings: fitOnSize(placed, flat, { locationId: print.locationId, cutToleranceUm: offered.blank.cutToleranceUm }),
  };
}

function isClearOn(offered: OfferedSize, print: Print, setType?: SetType): boolean {
  const flat = flatOf(offered.blank.kind, offered.size, print.side);
  const rules = { locationId: print.locationId, cutToleranceUm: offered.blank.cutToleranceUm };
  return isClear(placedPrint(print, keyOf(offered), flat, setType), flat, rules);
}

/** The ordered sizes of a garment on which some print of one side does not fit as it lies. */
export function troubledSizes(
  layout: Pick<LayoutDocument, 'garments' | 'prints'>,
  garmentId: string,
  side: Side,
  setType?: SetType,
): SizeKey[] {
  const garment = garmentOf(layout, garmentId);
  const fits = printsOn(layout, { garmentId, side }).flatMap((print) =>
    printFit({ garments: [garment] }, { ...print, garmentIds: [garmentId] }, setType),
  );
  return fits.filter(({ findings }) => findings.length > 0).map(({ offered }) => keyOf(offered));
}

/** The steps a suggested width goes by: 1/4 in, or 5 mm where the shop thinks in centimetres. */
export function suggestionStepUm(unit: LengthUnit): Micrometres {
  return unit === 'in' ? UM_PER_INCH / 4 : 5 * UM_PER_MM;
}

/**
 * The greatest width, no more than the present one and in whole steps of 1/4 in or 5 mm, at which a print has no finding
 * on these sizes of one of its groups, with its drop and distance across as they are; null when none down to a quarter of
 * it helps.
 */
function widthThatFits(
  print: Print,
  group: SizeGroup,
  on: readonly SizeFit[],
  unit: LengthUnit,
  setType?: SetType,
): Micrometres | null {
  const step = suggestionStepUm(unit);
  const from = Math.floor(group.widthUm / step) * step;
  for (let widthUm = from; widthUm >= group.widthUm / 4; widthUm -= step) {
    const tried = {
      ...print,
      sizeGroups: print.sizeGroups.map((each) => (each === group ? { ...each, widthUm } : each)),
    };
    if (on.every(({ offered }) => isClearOn(offered, tried, setType))) return widthUm;
  }
  return null;
}

/** A mend for a print that does not fit everywhere: these sizes of one group at a width that does. */
export type FitSuggestion = {
  readonly groupId: string;
  readonly sizes: readonly SizeKey[];
  readonly widthUm: Micrometres;
};

/** For each size group with findings, the sizes that have them and a width at which they have none. */
export function fitSuggestions(
  print: Print,
  fits: readonly SizeFit[],
  unit: LengthUnit,
  setType?: SetType,
): FitSuggestion[] {
  const troubled = fits.filter(({ findings }) => findings.length > 0);
  return print.sizeGroups.flatMap((group) => {
    const on = troubled.filter(({ offered }) => groupFor(print, keyOf(offered)) === group);
    if (on.length === 0) return [];
    const widthUm = widthThatFits(print, group, on, unit, setType);
    return widthUm === null
      ? []
      : [{ groupId: group.groupId, sizes: on.map(({ offered }) => keyOf(offered)), widthUm }];
  });
}

/**
 * The print with some sizes of a group set at a width of their own: the whole group where all its sizes are meant,
 * otherwise a new group beside it with the same drop and distance across.
 */
export function withOwnWidth(print: Print, { groupId, sizes, widthUm }: FitSuggestion, newGroupId: string): Print {
  return {
    ...print,
    sizeGroups: print.sizeGroups.flatMap((group) => {
      if (group.groupId !== groupId) return [group];
      const others = group.members.filter((member) => !sizes.some((size) => sameSize(size, member)));
      if (others.length === 0) return [{ ...group, widthUm }];
      const own = group.members.filter((member) => sizes.some((size) => sameSize(size, member)));
      return [
        { ...group, members: others },
        { ...group, groupId: newGroupId, members: own, widthUm },
      ];
    }),
  };
}

/** Every finding of a layout that stops it from being sent without a reason, with the print and size it is on. */
export function stoppingFindings(
  layout: Pick<LayoutDocument, 'garments' | 'prints'>,
  setType?: SetType,
): { readonly print: Print; readonly offered: OfferedSize; readonly finding: FitFinding }[] {
  return layout.prints.flatMap((print) =>
    printFit(layout, print, setType).flatMap(({ offered, findings }) =>
      findings.filter(isStopping).map((finding) => ({ print, offered, finding })),
    ),
  );
}
