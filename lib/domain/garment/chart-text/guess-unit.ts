import { mmFromUm, UM_PER_CM, UM_PER_INCH, UM_PER_MM } from '../../measure/length';
import { completeMeasures, type GarmentKind } from '../kinds';
import type { MeasureName } from '../measures';
import { STARTER_CHARTS } from '../starter-charts';
import type { WrittenUnit } from './chart-reading';

const UM_PER: Readonly<Record<WrittenUnit, number>> = { in: UM_PER_INCH, cm: UM_PER_CM, mm: UM_PER_MM };
/** Two units fit nearly as well when one is less than this much worse: a third of the step from inches to centimetres. */
const UNSURE_BELOW = Math.log(2.54) / 3;

/** The unit in which bare numbers come nearest to garments of this kind in any age band. */
export function guessUnit(
  kind: GarmentKind,
  numbers: readonly { readonly measure: MeasureName; readonly value: number }[],
): { readonly unit: WrittenUnit; readonly unsure: boolean } {
  const usual = usualMeasures(kind);
  const units = (Object.keys(UM_PER) as WrittenUnit[])
    .map((unit) => ({ unit, off: Math.min(...usual.map((um) => distance(um, numbers, UM_PER[unit]))) }))
    .sort((a, b) => a.off - b.off);
  const [best, second] = units;
  if (!(best && second)) throw new Error('no units to choose from');
  return { unit: best.unit, unsure: second.off - best.off < UNSURE_BELOW };
}

type Lengths = Readonly<Partial<Record<MeasureName, number>>>;

/** How far numbers taken in one unit are from usual lengths: the mean of the logarithms of their ratios. */
function distance(
  usual: Lengths,
  numbers: readonly { readonly measure: MeasureName; readonly value: number }[],
  umPer: number,
): number {
  const ratios = numbers.flatMap(({ measure, value }) => {
    const um = usual[measure];
    return um !== undefined && value > 0 ? [Math.abs(Math.log(mmFromUm(value * umPer) / mmFromUm(um)))] : [];
  });
  return ratios.length === 0 ? 0 : ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
}

/** The middle size of each starter chart of a kind. */
function usualMeasures(kind: GarmentKind): Lengths[] {
  const lengths = STARTER_CHARTS.filter((chart) => chart.kind === kind).flatMap(({ sizes }) => {
    const middle = sizes[Math.floor(sizes.length / 2)];
    const completed = middle && completeMeasures(kind, middle.entered);
    return completed?.ok ? [completed.measures.um] : [];
  });
  return lengths.length === 0 ? [{}] : lengths;
}
