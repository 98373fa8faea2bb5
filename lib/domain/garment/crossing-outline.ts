import { flattened } from '../geometry/path';
import { isSimpleRing } from '../geometry/simple-ring';
import { UM_PER_MM } from '../measure/length';
import { tapeFor } from './complete-measures';
import type { KindDesign } from './kind-design';
import type { EnteredMeasures, MeasureName, MeasureRefusal, Measures } from './measures';

/** Straight pieces that a curve of an outline is looked at as. */
const CUTS = 10;
/** A measure this near to its proportion is not what makes an outline cross itself (as a share; no source). */
const USUAL_WITHIN = 0.1;

/**
 * The last thing that can be wrong with a size, when each measure on its own could be: the edge of one of its sides would
 * cross itself. It is said of the entered measure that is furthest from its proportion to the others. Null when every
 * side is one plain shape.
 */
export function crossingOutline(
  design: Pick<KindDesign, 'required' | 'estimates' | 'sides' | 'draw'>,
  measures: Measures,
  entered: EnteredMeasures,
): MeasureRefusal | null {
  const tape = tapeFor(measures);
  const isPlain = design.sides.every((side) => {
    const [ring] = flattened(design.draw(tape, side).outline, CUTS);
    return ring !== undefined && isSimpleRing(ring);
  });
  return isPlain ? null : { reason: 'partTooLarge', measure: leastUsual(design, measures, entered) };
}

function leastUsual(
  { required, estimates }: Pick<KindDesign, 'required' | 'estimates'>,
  { um }: Measures,
  entered: EnteredMeasures,
): MeasureName {
  const tape = tapeFor({ um });
  const last = required.at(-1);
  if (!last) throw new Error('a kind without required measures');
  let [measure, furthest]: [MeasureName, number] = [last, USUAL_WITHIN];
  for (const name of Object.keys(estimates) as MeasureName[]) {
    const [value, usual] = [entered[name], estimates[name]?.(tape)];
    if (value === undefined || usual === undefined) continue;
    const off = Math.abs(Math.log(value / UM_PER_MM / usual));
    if (off > furthest) [measure, furthest] = [name, off];
  }
  return measure;
}
