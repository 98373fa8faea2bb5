import type { Path } from '../../geometry/path';
import type { Point } from '../../geometry/point';
import { straight } from './curves';
import { closed } from './drawn';

/** A closed upright rectangle between two corners. */
export function rectangle(topLeft: Point, bottomRight: Point): Path {
  return closed(straight(topLeft, { x: bottomRight.x, y: topLeft.y }, bottomRight, { x: topLeft.x, y: bottomRight.y }));
}
