import { type EnteredMeasures, MEASURE_NAMES, type MeasureName } from './measures';

/** A size that is smaller than the one before it in the chart. */
export type StepRefusal = {
  readonly reason: 'shrinks';
  readonly sizeId: string;
  readonly afterSizeId: string;
  readonly measure: MeasureName;
};

/**
 * Every place where a chart's sizes, listed from the smallest up, get smaller in a measure that both sizes give: somebody
 * mistyped, or the sizes are out of order. Empty for a chart whose sizes grow or stay.
 */
export function checkChartSteps(
  sizes: readonly { readonly id: string; readonly entered: EnteredMeasures }[],
): StepRefusal[] {
  return MEASURE_NAMES.flatMap((measure) => {
    const given = sizes.filter(({ entered }) => entered[measure] !== undefined);
    return given.slice(1).flatMap((size, index): StepRefusal[] => {
      const before = given[index];
      if (!before || (size.entered[measure] ?? 0) >= (before.entered[measure] ?? 0)) return [];
      return [{ reason: 'shrinks', sizeId: size.id, afterSizeId: before.id, measure }];
    });
  });
}
