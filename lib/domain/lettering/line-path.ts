import { close, curve, line, move, type PathStep } from '../geometry/path';
import { between, type Point } from '../geometry/point';
import type { OutlineStep, SetLine } from './type-engine';

/**
 * A set line as one path, thousandths of the letter height, the foot of a capital at y = 0, y down. `tracking` is added
 * between letters, and not between those that are written together.
 */
export function linePath(set: SetLine, tracking: number): PathStep[] {
  let added = 0;
  return set.letters.flatMap(({ x, outline, joinsNext }) => {
    const steps = outlinePath(outline, x + added);
    if (!joinsNext) added += tracking;
    return steps;
  });
}

/** Outline steps as a path, moved by `dx`; quadratic bows become the cubic ones that are the same curve. */
function outlinePath(outline: readonly OutlineStep[], dx: number): PathStep[] {
  const steps: PathStep[] = [];
  let from: Point = { x: dx, y: 0 };
  for (const { type, values } of outline) {
    const points = pairs(values, dx);
    const [first, second, third] = points;
    if (type === 'Z') steps.push(close);
    else if (type === 'M' && first) steps.push(move(first));
    else if (type === 'L' && first) steps.push(line(first));
    else if (type === 'Q' && first && second) {
      steps.push(curve(between(from, first, 2 / 3), between(second, first, 2 / 3), second));
    } else if (type === 'C' && first && second && third) steps.push(curve(first, second, third));
    else throw new Error(`outline step not understood: ${type} ${values.join(' ')}`);
    from = points.at(-1) ?? from;
  }
  return steps;
}

function pairs(values: readonly number[], dx: number): Point[] {
  return values.flatMap((x, index) => (index % 2 === 0 ? [{ x: x + dx, y: values[index + 1] ?? Number.NaN }] : []));
}
