import { flattened } from '../geometry/path';
import { isSimpleRing } from '../geometry/simple-ring';
import { tapeFor } from './complete-measures';
import type { KindDesign } from './kind-design';
import type { MeasureRefusal, Measures } from './measures';

/** Straight pieces that a curve of an outline is looked at as. */
const CUTS = 10;
/**
 * The last thing that can be wrong with a size, when each measure on its own could be: the edge of one of its sides would
 * cross itself. It is said of the last measure that a chart must give: on a top that is the sleeve, whose end then runs into
 * the body. Null when every side is one plain shape.
 */
export function crossingOutline(
  design: Pick<KindDesign, 'required' | 'sides' | 'draw'>,
  measures: Pick<Measures, 'um'>,
): MeasureRefusal | null {
  const tape = tapeFor(measures);
  const isPlain = design.sides.every((side) => {
    const [ring] = flattened(design.draw(tape, side).outline, CUTS);
    return ring !== undefined && isSimpleRing(ring);
  });
  if (isPlain) return null;
  const measure = design.required.at(-1);
  if (!measure) throw new Error('a kind has required measures');
  return { reason: 'partTooLarge', measure };
}
