import { umFromInches } from '../../measure/length';
import type { AgeBand, GarmentKind } from '../kinds';
import type { EnteredMeasures, MeasureName } from '../measures';

/** One size of a chart: a stable id, the label people order by, and what the chart gives. */
export type ChartSize = { readonly id: string; readonly label: string; readonly entered: EnteredMeasures };

/** Sizes of one kind of garment for one age band. */
export type StarterChart = {
  readonly id: string;
  readonly kind: GarmentKind;
  readonly ageBand: AgeBand;
  readonly sizes: readonly ChartSize[];
};

/** Measures in inches. */
export type InInches = Readonly<Partial<Record<MeasureName, number>>>;

/** Sizes that grow by the same step: the first size's measures in inches, and how much each next size adds. */
export function stepped(labels: readonly string[], first: InInches, step: InInches): ChartSize[] {
  return labels.map((label, index) => {
    const names = Object.keys(first) as MeasureName[];
    return {
      id: label,
      label,
      entered: Object.fromEntries(
        names.map((name) => [name, umFromInches((first[name] ?? 0) + (step[name] ?? 0) * index)]),
      ),
    };
  });
}
