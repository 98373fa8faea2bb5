import type { Point } from '../../geometry/point';
import type { TopFrame } from './top-frame';

/** How clear of the body a sleeve's end is laid, as a share of its length; for looks. */
const CLEAR_SHARE = 0.09;

/** The two corners of a sleeve's end, and how steeply it is laid. */
export type LaidSleeve = { readonly top: Point; readonly bottom: Point; readonly fallRad: number };

/** Lays a sleeve as steeply as asked for, or less so that its end lies clear of the body. */
export function laidClear(
  steepestRad: number,
  { underarm, hem }: TopFrame,
  lengthMm: number,
  laid: (steepRad: number) => Omit<LaidSleeve, 'fallRad'> & Partial<LaidSleeve>,
): LaidSleeve {
  const clearX = Math.max(underarm.x, hem.x) + lengthMm * CLEAR_SHARE;
  for (let steepRad = steepestRad; ; steepRad -= 0.02) {
    const ends = laid(steepRad);
    if (ends.bottom.x >= clearX || steepRad < -0.2) return { fallRad: steepRad, ...ends };
  }
}
