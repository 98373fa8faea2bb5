import { boxAroundBoxes } from '../../geometry/box';
import { type Path, pathBox } from '../../geometry/path';
import type { Flat } from '../flat';
import type { Drawn } from './drawn';

/** A flat put together from shapes; its box holds the parts that reach beyond the outline too, such as handles. */
export function assembled(side: Flat['side'], drawn: Drawn, outline: Path, points: Flat['points']): Flat {
  const box = boxAroundBoxes([outline, ...drawn.parts.map(({ path }) => path)].map(pathBox));
  return { side, ...drawn, outline, points, box };
}
