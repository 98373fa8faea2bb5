import type { Point } from '@/lib/domain/geometry/point';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { yardstickTicks } from '@/lib/editor/yardstick';
import styles from './held-measures.module.css';

/** How wide a narrow tape is, CSS pixels. */
export const STRIP_PX = 13;
/** How far a tick reaches in from the edge, as a share of that. */
const REACH = { whole: 0.6, half: 0.42, quarter: 0.3, fine: 0.2 } as const;

type TapeStripProps = { from: Point; to: Point; unit: LengthUnit; pxPerMm: number };

/** A narrow yellow tape between two places, CSS pixels, its ticks counted from the first. */
export function TapeStrip({ from, to, unit, pxPerMm }: TapeStripProps) {
  const lengthPx = Math.hypot(to.x - from.x, to.y - from.y);
  const turn = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  const ticks = yardstickTicks(unit, pxPerMm, 0, lengthPx);
  const half = STRIP_PX / 2;
  return (
    <g transform={`translate(${from.x} ${from.y}) rotate(${turn})`}>
      <rect x={0} y={-half} width={lengthPx} height={STRIP_PX} className={styles.strip} />
      <path
        className={styles.ticks}
        d={ticks.map(({ atPx, rank }) => `M${atPx} ${-half}v${STRIP_PX * REACH[rank]}`).join('')}
      />
      <path className={styles.ends} d={`M0 ${-half - 2}v${STRIP_PX + 4}M${lengthPx} ${-half - 2}v${STRIP_PX + 4}`} />
    </g>
  );
}
