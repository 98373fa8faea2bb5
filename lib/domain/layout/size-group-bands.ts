import { AGE_BANDS } from '../garment/kinds';
import type { Micrometres } from '../measure/length';
import type { GroupedSize } from './size-group-sizes';

/** Sizes that follow each other in width, all at one width of the print: one transfer to order. */
export type WidthBand = { readonly sizes: readonly GroupedSize[]; readonly widthUm: Micrometres };

/**
 * How much a size's own width may be missed by the one its band has, either way: a fifth. Beyond, the print looks small on
 * one size and large on the next (by eye; common practice, no source).
 */
export const SHARE_WITHIN = 1 / 5;

/**
 * The ordered sizes cut into bands that follow each other in width, within one age band each, and a width for every band.
 * There are as many as asked for, fewer where that would be more than one for every two sizes, and as many more as it
 * takes that no size is missed by more than a fifth and none has a finding that a width could avoid. Of all such cuts, the
 * one that comes nearest to the sizes' own widths. The anchor's band has the anchor's width.
 */
export function widthBands(
  sizes: readonly GroupedSize[],
  anchor: GroupedSize,
  { count, stepUm }: { readonly count: number; readonly stepUm: Micrometres },
): WidthBand[] {
  const ordered = [...sizes].sort((a, b) => bandOf(a) - bandOf(b) || a.girthUm - b.girthUm);
  const least = Math.max(1, Math.min(count, Math.ceil(ordered.length / 2)));
  const bands = cheapestBands(ordered, anchor, stepUm);
  for (let many = least; many <= ordered.length; many += 1) {
    const found = bands(ordered.length, many);
    if (found) return found.bands;
  }
  throw new Error(`no bands for ${ordered.length} sizes`);
}

type Cut = { readonly bands: WidthBand[]; readonly cost: number };

/** The cheapest cut of the first so many sizes into so many bands; null when there is none. */
function cheapestBands(ordered: readonly GroupedSize[], anchor: GroupedSize, stepUm: Micrometres) {
  const bandFrom = once((start, end) => oneBand(ordered.slice(start, end), anchor, stepUm));
  const cheapest = once((end, many): Cut | null => {
    if (end === 0 || many === 0) return end === many ? { bands: [], cost: 0 } : null;
    const cuts = startsOf(ordered, end).map((start) => joined(cheapest(start, many - 1), bandFrom(start, end)));
    return cuts.reduce((best, cut) => (cut && (!best || cut.cost < best.cost) ? cut : best), null);
  });
  return cheapest;
}

/** Where a band that ends before `end` can start: anywhere down to the first size of its age band. */
function startsOf(ordered: readonly GroupedSize[], end: number): number[] {
  const ageBand = ordered[end - 1]?.ageBand;
  const first = ordered.findIndex((size) => size.ageBand === ageBand);
  return Array.from({ length: end - first }, (_, back) => end - 1 - back);
}

function joined(before: Cut | null, last: Cut | null): Cut | null {
  return before && last && { bands: [...before.bands, ...last.bands], cost: before.cost + last.cost };
}

/** The same answers, each worked out once. */
function once(answer: (a: number, b: number) => Cut | null): (a: number, b: number) => Cut | null {
  const known = new Map<string, Cut | null>();
  return (a, b) => {
    const key = `${a}/${b}`;
    const already = known.get(key);
    if (already !== undefined) return already;
    const found = answer(a, b);
    known.set(key, found);
    return found;
  };
}

/**
 * A band's width and how far it misses its sizes' own (the sum of squared logarithms: twice as wide is as bad as half as
 * wide); null when no one width will do for all of them.
 */
function oneBand(sizes: readonly GroupedSize[], anchor: GroupedSize, stepUm: Micrometres): Cut | null {
  const own = sizes.map(({ ownWidthUm }) => ownWidthUm);
  const widthUm = widthsToTry(sizes, anchor, stepUm).find((each) => willDo(sizes, each));
  if (widthUm === undefined) return null;
  return { bands: [{ sizes, widthUm }], cost: own.reduce((sum, each) => sum + Math.log(widthUm / each) ** 2, 0) };
}

/** The anchor's width; a lone size's own; otherwise from between the narrowest and the widest own width down. */
function widthsToTry(sizes: readonly GroupedSize[], anchor: GroupedSize, stepUm: Micrometres): Micrometres[] {
  const own = sizes.map(({ ownWidthUm }) => ownWidthUm);
  const [only] = own;
  if (sizes.includes(anchor)) return [anchor.ownWidthUm];
  if (sizes.length === 1 && only !== undefined) return [only];
  const widest = Math.max(...own);
  const from = Math.round(Math.sqrt(Math.min(...own) * widest) / stepUm);
  const least = Math.ceil((widest * (1 - SHARE_WITHIN)) / stepUm);
  return Array.from({ length: Math.max(0, from - least + 1) }, (_, down) => (from - down) * stepUm);
}

function willDo(sizes: readonly GroupedSize[], widthUm: Micrometres): boolean {
  return (
    widthUm > 0 &&
    sizes.every(({ ownWidthUm, takes }) => Math.abs(widthUm / ownWidthUm - 1) <= SHARE_WITHIN && takes(widthUm))
  );
}

/** Smallest garments first. */
function bandOf({ ageBand }: GroupedSize): number {
  return -AGE_BANDS.indexOf(ageBand);
}
