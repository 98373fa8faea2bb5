import type { FrozenFlat } from '@/lib/domain/garment/flat';
import type { Box } from '@/lib/domain/geometry/box';

/** How a size hangs: what of it is seen, mm of its flat; where its two pegs are; and the piece of line it hangs from. */
export type HungPlace = {
  readonly box: Box;
  readonly pegs: readonly { readonly x: number; readonly y: number }[];
  /** Heights of the line at the left edge, middle and right edge of the place, mm of the flat. */
  readonly line: readonly [left: number, middle: number, right: number];
};

/** Room around a garment, above the line for the pegs, and above a hood, mm (by eye). */
const BESIDE_MM = 55;
const ABOVE_MM = 92;
const ABOVE_HOOD_MM = 10;
const BELOW_MM = 14;
/** How far the line sags in the middle, mm of the garments on it (by eye). */
const SAG_MM = 60;

/**
 * Hangs garments side by side from one sagging line. All places are equally high, so that shown at one height all
 * garments are at one scale; each hangs as low as the line is where it hangs.
 *
 * ```
 *   ──┬──┬──___        ___──┬──┬──
 *    [    ]    ──┬──┬──    [    ]
 *    [____]     [    ]     [____]
 * ```
 */
export function hungLine(flats: readonly Pick<FrozenFlat, 'box' | 'points'>[]): HungPlace[] {
  const bottom = Math.max(...flats.map(({ box, points }) => box.y + box.height - pegHeight({ box, points })));
  // A hood stands up over the line.
  const hood = Math.max(...flats.map((flat) => pegHeight(flat) - flat.box.y));
  const above = Math.max(ABOVE_MM, hood + ABOVE_HOOD_MM);
  const height = above + SAG_MM + bottom + BELOW_MM;
  return flats.map((flat, index) => {
    const [left, middle, right] = [index, index + 0.5, index + 1].map((at) => sagAt(at / flats.length)) as [
      number,
      number,
      number,
    ];
    const pegY = pegHeight(flat);
    const top = pegY - above - middle;
    const halfWidth = flat.box.width / 2 + BESIDE_MM;
    const lineAt = (sag: number) => top + above + sag;
    const pegX = pegReach(flat);
    return {
      box: { x: flat.box.x + flat.box.width / 2 - halfWidth, y: top, width: 2 * halfWidth, height },
      pegs: [-pegX, pegX].map((x) => ({ x, y: pegY })),
      line: [lineAt(left), lineAt(middle), lineAt(right)],
    };
  });
}

/** How far the line has sunk at a share of its length: a shallow parabola. */
function sagAt(share: number): number {
  return SAG_MM * 4 * share * (1 - share);
}

/** Pegs sit on the shoulder, just outside the neck; where there is none, a quarter in from each edge. */
function pegReach({ box, points }: Pick<FrozenFlat, 'box' | 'points'>): number {
  const neck = points.highPointShoulder;
  return neck ? Math.abs(neck.x) + 22 : box.width / 4;
}

function pegHeight({ box, points }: Pick<FrozenFlat, 'box' | 'points'>): number {
  const neck = points.highPointShoulder;
  return neck ? neck.y + 4 : box.y + 2;
}
