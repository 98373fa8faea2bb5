import type { Side } from '@/lib/domain/garment/flat';
import type { LayoutDocument, Print, SizeKey } from '@/lib/domain/layout/document';
import { showsTheSame } from '@/lib/domain/layout/print-content';
import { type PrintReading, printReading } from '@/lib/domain/layout/readings';
import { groupFor, keyOf, offeredSizes } from '@/lib/domain/layout/sizes';
import type { Centidegrees } from '@/lib/domain/measure/angle';
import { saysTheSame } from './same-layout';

/** One thing in which two copies of a layout differ, as seen from `mine`. */
export type LayoutDifference =
  | { readonly kind: 'onlyMine' | 'onlyTheirs'; readonly print: Print }
  | { readonly kind: 'renamed'; readonly mine: string; readonly theirs: string }
  | {
      readonly kind: 'moved' | 'otherPicture' | 'otherLettering' | 'otherGarments';
      readonly mine: Print;
      readonly theirs: Print;
    }
  /** Whether the print goes ahead though it is soft: `mine` says so of mine. */
  | { readonly kind: 'goesAheadSoft'; readonly print: Print; readonly mine: boolean }
  | { readonly kind: 'turned'; readonly print: Print; readonly mine: Centidegrees; readonly theirs: Centidegrees }
  | {
      readonly kind: 'reads';
      readonly print: Print;
      /** The sizes that read so in both copies. */
      readonly sizes: readonly SizeKey[];
      readonly mine: PrintReading;
      readonly theirs: PrintReading;
    }
  | { readonly kind: 'order' | 'garments' | 'rest' };

/** In what two copies of a layout differ: print by print in the order of mine, then whatever is only in theirs, then the rest. */
export function layoutDifferences(mine: LayoutDocument, theirs: LayoutDocument): LayoutDifference[] {
  const prints = mine.prints.flatMap((print): LayoutDifference[] => {
    const other = theirs.prints.find(({ printId }) => printId === print.printId);
    return other ? printDifferences(mine, print, other) : [{ kind: 'onlyMine', print }];
  });
  const added = theirs.prints
    .filter(({ printId }) => !mine.prints.some((print) => print.printId === printId))
    .map((print): LayoutDifference => ({ kind: 'onlyTheirs', print }));
  return [...prints, ...added, ...orderDifference(mine, theirs), ...otherDifferences(mine, theirs)];
}

function printDifferences({ garments }: LayoutDocument, mine: Print, theirs: Print): LayoutDifference[] {
  if (mine === theirs) return [];
  const found: LayoutDifference[] = [];
  if (mine.name !== theirs.name) found.push({ kind: 'renamed', mine: mine.name, theirs: theirs.name });
  if (!showsTheSame(mine.content, theirs.content)) {
    const bothLettered = mine.content.kind === 'lettering' && theirs.content.kind === 'lettering';
    found.push({ kind: bothLettered ? 'otherLettering' : 'otherPicture', mine, theirs });
  }
  if (mine.goAheadSoft !== theirs.goAheadSoft)
    found.push({ kind: 'goesAheadSoft', print: mine, mine: mine.goAheadSoft === true });
  if (!sameIds(mine.garmentIds, theirs.garmentIds)) found.push({ kind: 'otherGarments', mine, theirs });
  if (mine.locationId !== theirs.locationId) return [...found, { kind: 'moved', mine, theirs }];
  if (mine.turnCentideg !== theirs.turnCentideg)
    found.push({ kind: 'turned', print: mine, mine: mine.turnCentideg, theirs: theirs.turnCentideg });
  return [...found, ...readingDifferences(garments, mine, theirs)];
}

/** Sizes that read the same in both copies are said together. */
function readingDifferences(garments: LayoutDocument['garments'], mine: Print, theirs: Print): LayoutDifference[] {
  const both = garments.filter(
    ({ garmentId }) => mine.garmentIds.includes(garmentId) && theirs.garmentIds.includes(garmentId),
  );
  const bands = new Map<string, { sizes: SizeKey[]; mine: PrintReading; theirs: PrintReading }>();
  for (const size of both.flatMap(offeredSizes).map(keyOf)) {
    const [group, other] = [groupIn(mine, size), groupIn(theirs, size)];
    if (!(group && other)) continue;
    const [here, there] = [printReading(mine, group), printReading(theirs, other)];
    const says = JSON.stringify([here, there]);
    if (JSON.stringify(here) === JSON.stringify(there)) continue;
    const band = bands.get(says) ?? { sizes: [], mine: here, theirs: there };
    bands.set(says, { ...band, sizes: [...band.sizes, size] });
  }
  return [...bands.values()].map((band) => ({ kind: 'reads', print: mine, ...band }));
}

/** The other copy may offer other sizes. */
function groupIn(print: Print, size: SizeKey) {
  const has = print.sizeGroups.some(({ members }) =>
    members.some(({ blankId, sizeId }) => blankId === size.blankId && sizeId === size.sizeId),
  );
  return has ? groupFor(print, size) : null;
}

function orderDifference(mine: LayoutDocument, theirs: LayoutDocument): LayoutDifference[] {
  const ids = (layout: LayoutDocument, other: LayoutDocument) =>
    layout.prints.map(({ printId }) => printId).filter((id) => other.prints.some(({ printId }) => printId === id));
  const [here, there] = [ids(mine, theirs), ids(theirs, mine)];
  return here.every((id, index) => id === there[index]) ? [] : [{ kind: 'order' }];
}

function otherDifferences(mine: LayoutDocument, theirs: LayoutDocument): LayoutDifference[] {
  const differs = (change: Partial<LayoutDocument>) => !saysTheSame({ ...mine, ...change }, mine);
  const { prints: _prints, garments, ...rest } = theirs;
  return [
    ...(differs({ garments }) ? [{ kind: 'garments' as const }] : []),
    ...(differs(rest) ? [{ kind: 'rest' as const }] : []),
  ];
}

function sameIds(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((id) => b.includes(id));
}

/** Which side shows that they differ: the one that is up if it does, otherwise that of the first print that differs. */
export function sideThatDiffers(
  differences: readonly LayoutDifference[],
  shown: { readonly garmentId: string; readonly side: Side },
): { readonly garmentId: string; readonly side: Side } {
  const prints = differences.flatMap((difference) => {
    if ('print' in difference) return [difference.print];
    const { kind } = difference;
    return kind === 'moved' || kind === 'otherPicture' || kind === 'otherLettering' ? [difference.mine] : [];
  });
  const isUp = prints.some(({ side, garmentIds }) => side === shown.side && garmentIds.includes(shown.garmentId));
  const [first] = prints;
  const garmentId = first?.garmentIds.includes(shown.garmentId) ? shown.garmentId : first?.garmentIds[0];
  return isUp || !first || garmentId === undefined ? shown : { garmentId, side: first.side };
}
