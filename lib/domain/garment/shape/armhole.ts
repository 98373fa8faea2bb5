import { move, type Path } from '../../geometry/path';
import type { TopFrame } from './top-frame';

/** Shoulder point to underarm: close to upright at the shoulder, sweeping out underneath. */
export function armholeCurve({ shoulder, underarm }: TopFrame): Path {
  const height = underarm.y - shoulder.y;
  const inset = height * 0.075;
  return [
    move(shoulder),
    {
      step: 'curve',
      c1: { x: shoulder.x - inset, y: shoulder.y + height * 0.36 },
      c2: { x: shoulder.x - inset * 0.4, y: underarm.y - height * 0.16 },
      to: underarm,
    },
  ];
}
