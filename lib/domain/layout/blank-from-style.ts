import type { BlankStyle, StyleSize } from '../garment/blank-style';
import type { StarterChart } from '../garment/chart/chart';
import { completeMeasures } from '../garment/kinds';
import type { MeasureRefusal } from '../garment/measures';
import { USUAL_CUT_TOLERANCE } from '../garment/starter-charts';
import type { GarmentBlank } from './document';

/** What a garment is hung from: a style of the shop's list, or a starter chart under a name. */
export type StyleToHang = Pick<BlankStyle, 'name' | 'kind' | 'ageBand' | 'fabric' | 'cutToleranceUm'> & {
  readonly sizes: readonly Pick<StyleSize, 'sizeId' | 'label' | 'entered'>[];
};

/** Why no flat can be drawn from a style: its chart is empty, or the measures of one of its sizes cannot be. */
export type StyleRefusal =
  | { readonly reason: 'noSizes' }
  | { readonly reason: 'impossible'; readonly sizeLabel: string; readonly refusal: MeasureRefusal };

export type BlankFromStyle =
  | { readonly ok: true; readonly blank: GarmentBlank }
  | { readonly ok: false; readonly refusal: StyleRefusal };

/** Which blank it is in a layout, and which of the shop's list it was taken from, where it was from there. */
type BlankIds = Pick<GarmentBlank, 'blankId' | 'shopBlankId'>;

/**
 * A style as a layout holds it: every measure of every size resolved, the estimated ones marked, so that nothing in the
 * layout changes when the shop edits the style. Refused where the chart is empty or a size of it cannot be.
 */
export function blankFromStyle(style: StyleToHang, { blankId, shopBlankId }: BlankIds): BlankFromStyle {
  const { name, kind, ageBand, fabric, cutToleranceUm } = style;
  if (style.sizes.length === 0) return { ok: false, refusal: { reason: 'noSizes' } };
  const sizes: GarmentBlank['sizes'] = [];
  for (const { sizeId, label, entered } of style.sizes) {
    const completed = completeMeasures(kind, entered);
    if (!completed.ok) {
      return { ok: false, refusal: { reason: 'impossible', sizeLabel: label, refusal: completed.refusal } };
    }
    const { um, estimated } = completed.measures;
    sizes.push({ sizeId, label, measuresUm: { ...um }, estimated: [...estimated] });
  }
  const ids = { blankId, ...(shopBlankId !== undefined && { shopBlankId }) };
  return { ok: true, blank: { ...ids, name, kind, ageBand, fabric, cutToleranceUm: { ...cutToleranceUm }, sizes } };
}

/** A starter chart as a style of this name and cloth, cut as usual. */
export function styleOfChart(chart: StarterChart, { name, fabric }: Pick<BlankStyle, 'name' | 'fabric'>): StyleToHang {
  const { kind, ageBand, sizes } = chart;
  return {
    name,
    kind,
    ageBand,
    fabric,
    cutToleranceUm: { ...USUAL_CUT_TOLERANCE },
    sizes: sizes.map(({ id, label, entered }) => ({ sizeId: id, label, entered })),
  };
}
