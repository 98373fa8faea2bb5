import { kindMeasures } from '../garment/kinds';
import { MEASURE_NAMES, type MeasureName } from '../garment/measures';
import type { Micrometres } from '../measure/length';
import { type EditedBlanks, inBandOrder, withReadings } from './blank-edits';
import type { StyleToHang } from './blank-from-style';
import type { GarmentBlank, GarmentSize, LayoutDocument, SizeKey } from './document';
import { isOrdered, withGarment, withoutMembers, withRenamedSizes } from './garment-members';
import { garmentOf, sameSize } from './sizes';

/** What differs between a chart as a garment was drawn from it and as it is now. */
export type ChartChanges = {
  /** Measures the new chart gives that were other ones: size by size, in the order of the new chart. */
  readonly measures: readonly {
    readonly label: string;
    readonly measure: MeasureName;
    readonly fromUm: Micrometres | null;
    readonly toUm: Micrometres;
  }[];
  /** Labels of sizes that came, that went, and that are called something else now. */
  readonly added: readonly string[];
  readonly gone: readonly string[];
  readonly renamed: readonly { readonly from: string; readonly to: string }[];
  /** Name, fabric, age band, cut tolerance, order of the sizes, or only what is estimated. */
  readonly besides: boolean;
};

/**
 * Whether a style still gives what a blank was made from, without estimating the rest again: name, fabric, tolerance, and
 * for each size the same label and entered measures.
 */
export function isChartAsTaken(blank: GarmentBlank, style: StyleToHang): boolean {
  const measures = kindMeasures(blank.kind);
  const taken = blank.sizes.map(({ sizeId, label, measuresUm, estimated }) => [
    sizeId,
    label,
    measures.map((measure) => (estimated.includes(measure) ? null : (measuresUm[measure] ?? null))),
  ]);
  const given = style.sizes.map(({ sizeId, label, entered }) => [
    sizeId,
    label,
    measures.map((measure) => entered[measure] ?? null),
  ]);
  return (
    blank.kind === style.kind &&
    JSON.stringify([aboutBlank(blank), taken]) === JSON.stringify([aboutBlank(style), given])
  );
}

/** What taking a chart as it is now would change in a garment; null where nothing would. */
export function chartChanges(before: GarmentBlank, fresh: GarmentBlank): ChartChanges | null {
  if (chartText(before) === chartText(fresh)) return null;
  const kept = sameSizes(before.sizes, fresh.sizes);
  const oldOf = ({ sizeId }: GarmentSize) => before.sizes.find((size) => kept.get(size.sizeId) === sizeId);
  const measures = fresh.sizes.flatMap((size) => {
    const old = oldOf(size);
    return old ? changedMeasures(old, size) : [];
  });
  const renamed = fresh.sizes.flatMap((size) => {
    const old = oldOf(size);
    return old && old.label !== size.label ? [{ from: old.label, to: size.label }] : [];
  });
  const added = fresh.sizes.filter((size) => !oldOf(size)).map(({ label }) => label);
  const gone = before.sizes.filter(({ sizeId }) => !kept.has(sizeId)).map(({ label }) => label);
  const besides = measures.length + renamed.length + added.length + gone.length === 0 || differsBesides(before, fresh);
  return { measures, added, gone, renamed, besides };
}

function changedMeasures(old: GarmentSize, { label, measuresUm, estimated }: GarmentSize): ChartChanges['measures'] {
  return MEASURE_NAMES.flatMap((measure) => {
    const toUm = measuresUm[measure];
    const fromUm = old.measuresUm[measure] ?? null;
    if (toUm === undefined || estimated.includes(measure) || toUm === fromUm) return [];
    return [{ label, measure, fromUm, toUm }];
  });
}

/** All that a chart says of a blank. What else hangs on the blank stays with it. */
function chartText({ sizes, ...blank }: GarmentBlank): string {
  const measured = sizes.map(({ sizeId, label, measuresUm, estimated }) => [
    sizeId,
    label,
    MEASURE_NAMES.map((measure) => measuresUm[measure] ?? null),
    MEASURE_NAMES.filter((measure) => estimated.includes(measure)),
  ]);
  return JSON.stringify([aboutBlank(blank), measured]);
}

function aboutBlank({ name, fabric, ageBand, cutToleranceUm }: Omit<StyleToHang, 'sizes' | 'kind'>) {
  return [name, fabric, ageBand, cutToleranceUm.acrossUm, cutToleranceUm.longUm];
}

function differsBesides(a: GarmentBlank, b: GarmentBlank): boolean {
  return JSON.stringify(aboutBlank(a)) !== JSON.stringify(aboutBlank(b));
}

/**
 * The layout with a blank's chart as the shop's list has it now. `fresh` is that style resolved under the same `blankId`.
 * Sizes are the same by id or else by label, and keep their counts and readings; new ones get readings as `hangBlank`
 * gives them; ones that are gone leave, and stop it where they are ordered. Photographs stay on sizes drawn as before; on
 * others they were set to scale by measures that no longer hold, and go. Throws for a garment the layout does not have.
 */
export function takeChart(
  layout: LayoutDocument,
  garmentId: string,
  fresh: GarmentBlank,
  newId: () => string,
): EditedBlanks {
  const garment = garmentOf(layout, garmentId);
  const before = garment.blanks.find(({ blankId }) => blankId === fresh.blankId);
  if (!before) return { ok: false, refusal: { reason: 'noBlank' } };
  if (before.kind !== fresh.kind) return { ok: false, refusal: { reason: 'otherKind' } };
  const { blankId } = before;
  const kept = sameSizes(before.sizes, fresh.sizes);
  const isGone = (key: SizeKey) => key.blankId === blankId && !kept.has(key.sizeId);
  const missed = before.sizes.filter(({ sizeId }) => {
    const key = { blankId, sizeId };
    return isGone(key) && isOrdered(layout, garment, (each) => sameSize(each, key));
  });
  if (missed.length > 0) {
    return { ok: false, refusal: { reason: 'countedSizesGone', labels: missed.map(({ label }) => label) } };
  }
  const named = <Key extends SizeKey>(key: Key): Key =>
    key.blankId === blankId ? { ...key, sizeId: kept.get(key.sizeId) ?? key.sizeId } : key;
  const taken = withGarment(withoutMembers(layout, isGone), garmentId, (each) => ({
    ...each,
    blanks: inBandOrder(
      each.blanks.map((blank) =>
        blank.blankId === blankId ? { ...blank, ...fresh, ...stillSet(blank, fresh, kept) } : blank,
      ),
    ),
    counts: each.counts.filter((count) => !isGone(count)),
  }));
  return withReadings(withRenamedSizes(taken, named), garmentId, newId);
}

/** A blank without any stays so; one that loses all keeps an empty list, by which it can be told from one shown as drawn. */
function stillSet(
  { photographs, sizes }: GarmentBlank,
  fresh: GarmentBlank,
  kept: ReadonlyMap<string, string>,
): Pick<GarmentBlank, 'photographs'> {
  if (!photographs) return {};
  const drawnAlike = (a: GarmentSize, b: GarmentSize) =>
    MEASURE_NAMES.every((measure) => a.measuresUm[measure] === b.measuresUm[measure]);
  const held = photographs.flatMap((photograph) => {
    const old = sizes.find(({ sizeId }) => sizeId === photograph.sizeId);
    const size = fresh.sizes.find(({ sizeId }) => sizeId === kept.get(photograph.sizeId));
    return old && size && drawnAlike(old, size) ? [{ ...photograph, sizeId: size.sizeId }] : [];
  });
  return { photographs: held };
}

/** Which size of a new chart is which of an old one, by id first, then by label: old id → new id. */
function sameSizes(before: readonly GarmentSize[], fresh: readonly GarmentSize[]): Map<string, string> {
  const found = new Map<string, string>();
  for (const { sizeId } of before) if (fresh.some((size) => size.sizeId === sizeId)) found.set(sizeId, sizeId);
  for (const { sizeId, label } of before) {
    const like = found.has(sizeId) ? undefined : fresh.find((size) => size.label === label && !hasNew(found, size));
    if (like) found.set(sizeId, like.sizeId);
  }
  return found;
}

function hasNew(found: ReadonlyMap<string, string>, { sizeId }: GarmentSize): boolean {
  return [...found.values()].includes(sizeId);
}
