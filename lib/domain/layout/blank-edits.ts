import { AGE_BANDS, type AgeBand } from '../garment/kinds';
import type { GarmentBlank, LayoutDocument } from './document';
import { isOrdered, withGarment, withoutMembers } from './garment-members';
import { type GroupingRefusal, withNewSizesGrouped } from './group-new-sizes';
import { garmentOf } from './sizes';

/** As many blanks as hang under one garment of a layout document. */
export const MOST_BLANKS = 6;

/** Why the blanks under a garment stay as they are. */
export type BlankRefusal =
  | { readonly reason: 'noBlank' | 'otherKind' | 'alreadyHung' | 'tooManyBlanks' | 'lastBlank' | 'counted' }
  /** These sizes are ordered and no longer in the chart. */
  | { readonly reason: 'countedSizesGone'; readonly labels: readonly string[] }
  | GroupingRefusal;

export type EditedBlanks =
  | { readonly ok: true; readonly layout: LayoutDocument }
  | { readonly ok: false; readonly refusal: BlankRefusal };

type Origin = Pick<GarmentBlank, 'shopBlankId' | 'kind' | 'ageBand'>;

/** True for two blanks of one origin: the same of the shop's list, or starter charts of one kind and age band. */
export function isSameStyle(a: Origin, b: Origin): boolean {
  if (a.shopBlankId !== undefined || b.shopBlankId !== undefined) return a.shopBlankId === b.shopBlankId;
  return a.kind === b.kind && a.ageBand === b.ageBand;
}

/** Blanks in the order their sizes are listed in: smallest age band first, otherwise as they came. */
export function inBandOrder(blanks: readonly GarmentBlank[]): GarmentBlank[] {
  const rank = (band: AgeBand) => -AGE_BANDS.indexOf(band);
  return blanks.toSorted((a, b) => rank(a.ageBand) - rank(b.ageBand));
}

/**
 * The layout with one more blank under a garment, of the same kind as those that hang there: youth sizes, or a second
 * style. Every print of the garment gets readings for the new sizes; `newId` names the size groups that takes. Refused
 * where a print is at a place that does not suit them. Throws for a garment the layout does not have.
 */
export function hangBlank(
  layout: LayoutDocument,
  garmentId: string,
  blank: GarmentBlank,
  newId: () => string,
): EditedBlanks {
  const { blanks } = garmentOf(layout, garmentId);
  if (blanks.some(({ kind }) => kind !== blank.kind)) return refused('otherKind');
  if (blanks.some((hung) => isSameStyle(hung, blank))) return refused('alreadyHung');
  if (blanks.length >= MOST_BLANKS) return refused('tooManyBlanks');
  const hung = withGarment(layout, garmentId, (garment) => ({
    ...garment,
    blanks: inBandOrder([...garment.blanks, blank]),
  }));
  return withReadings(hung, garmentId, newId);
}

/**
 * The layout without one blank of a garment and its sizes. Refused for the last one, and while any of its sizes is
 * ordered. Throws for a garment the layout does not have.
 */
export function takeDownBlank(layout: LayoutDocument, garmentId: string, blankId: string): EditedBlanks {
  const garment = garmentOf(layout, garmentId);
  if (!garment.blanks.some((each) => each.blankId === blankId)) return refused('noBlank');
  if (garment.blanks.length === 1) return refused('lastBlank');
  if (isOrdered(layout, garment, (key) => key.blankId === blankId)) return refused('counted');
  const taken = withGarment(layout, garmentId, (each) => ({
    ...each,
    blanks: each.blanks.filter((blank) => blank.blankId !== blankId),
    counts: each.counts.filter((count) => count.blankId !== blankId),
  }));
  return { ok: true, layout: withoutMembers(taken, (key) => key.blankId === blankId) };
}

/** The layout with readings for every size of a garment that a print of it has none for yet. */
export function withReadings(layout: LayoutDocument, garmentId: string, newId: () => string): EditedBlanks {
  const prints: LayoutDocument['prints'] = [];
  for (const print of layout.prints) {
    const next = print.garmentIds.includes(garmentId)
      ? withNewSizesGrouped(layout, print, newId)
      : { ok: true as const, print };
    if (!next.ok) return next;
    prints.push(next.print);
  }
  return { ok: true, layout: { ...layout, prints } };
}

function refused(reason: 'otherKind' | 'alreadyHung' | 'tooManyBlanks' | 'noBlank' | 'lastBlank' | 'counted') {
  return { ok: false, refusal: { reason } } as const;
}
