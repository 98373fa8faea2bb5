import type { StyleSize } from '../blank-style';
import { checkChartSteps, type StepRefusal } from '../chart-steps';
import { completeMeasures, type GarmentKind } from '../kinds';
import type { MeasureRefusal } from '../measures';

/** What is wrong with a chart. */
export type CheckedChart = {
  /** Nothing is. */
  readonly sound: boolean;
  /** The first thing wrong with each size that cannot be, in the order of the chart. */
  readonly refusals: readonly { readonly sizeId: string; readonly refusal: MeasureRefusal }[];
  /** Every measure that gets smaller from a size to the next one that gives it. */
  readonly steps: readonly StepRefusal[];
};

/** Looks through the sizes of a chart, smallest first, for what cannot belong to a garment of this kind. */
export function checkedChart(kind: GarmentKind, sizes: readonly Pick<StyleSize, 'sizeId' | 'entered'>[]): CheckedChart {
  const refusals = sizes.flatMap(({ sizeId, entered }) => {
    const completed = completeMeasures(kind, entered);
    return completed.ok ? [] : [{ sizeId, refusal: completed.refusal }];
  });
  const steps = checkChartSteps(sizes.map(({ sizeId, entered }) => ({ id: sizeId, entered })));
  return { sound: refusals.length === 0 && steps.length === 0, refusals, steps };
}
