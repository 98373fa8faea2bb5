import { memo, useMemo } from 'react';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { type Tick, type TickRank, yardstickTicks } from '@/lib/editor/yardstick';
import { classNames } from '../ui/class-names';
import styles from './yardstick.module.css';

/** How far a tick reaches in from the edge of the stick, as a share of its width. */
const REACH: Record<TickRank, number> = { whole: 0.44, half: 0.34, quarter: 0.24, fine: 0.15 };

type YardstickProps = {
  unit: LengthUnit;
  lie: 'along' | 'down';
  pxPerMm: number;
  /** Where its zero lies on the paper, CSS pixels. */
  zeroPx: number;
  lengthPx: number;
  widthPx: number;
};

/** A wooden yardstick along the top or the left edge of the paper, its zero at what the print is measured from. */
export const Yardstick = memo(function Yardstick({ unit, lie, pxPerMm, zeroPx, lengthPx, widthPx }: YardstickProps) {
  const ticks = useMemo(() => yardstickTicks(unit, pxPerMm, zeroPx, lengthPx), [unit, pxPerMm, zeroPx, lengthPx]);
  const along = lie === 'along';
  const [width, height] = along ? [lengthPx, widthPx] : [widthPx, lengthPx];
  return (
    <svg className={along ? styles.along : styles.down} width={width} height={height} aria-hidden="true">
      <path d={grain(lengthPx, widthPx, along)} className={styles.grain} />
      <path d={ticks.map((tick) => tickData(tick, along, widthPx)).join('')} className={styles.ticks} />
      {ticks.map(({ atPx, number }) =>
        number === null ? null : (
          <text
            key={number}
            x={along ? atPx : widthPx * 0.53}
            y={along ? widthPx * 0.38 : atPx}
            className={classNames(number === 0 ? styles.zero : styles.number, Math.abs(number) >= 100 && styles.long)}
            dominantBaseline="central"
            textAnchor={along ? 'middle' : 'end'}
          >
            {along ? Math.abs(number) : String(number).replace('-', '−')}
          </text>
        ),
      )}
    </svg>
  );
});

type MarkProps = { lie: 'along' | 'down'; fromPx: number; toPx: number; widthPx: number };

/** What the print in hand spans on a yardstick. */
export function YardstickMark({ lie, fromPx, toPx, widthPx }: MarkProps) {
  const along = lie === 'along';
  const [from, length] = [Math.min(fromPx, toPx), Math.max(1, Math.abs(toPx - fromPx))];
  return (
    <svg className={along ? styles.markAlong : styles.markDown} aria-hidden="true">
      <rect
        x={along ? from : widthPx - 4}
        y={along ? widthPx - 4 : from}
        width={along ? length : 4}
        height={along ? 4 : length}
        className={styles.mark}
      />
    </svg>
  );
}

function tickData({ atPx, rank }: Tick, along: boolean, widthPx: number): string {
  const at = Math.round(atPx) + 0.5;
  const from = widthPx * (1 - REACH[rank]);
  return along ? `M${at} ${from}V${widthPx}` : `M${from} ${at}H${widthPx}`;
}

/** Two faint lines of grain, so that the stick reads as wood. */
function grain(lengthPx: number, widthPx: number, along: boolean): string {
  const runs = [0.18, 0.62].map((share, index) => ({ at: widthPx * share, bow: index === 0 ? 1.5 : -1.5 }));
  const third = lengthPx / 3;
  return runs
    .map(({ at, bow }) =>
      along
        ? `M0 ${at}C${third} ${at + bow} ${2 * third} ${at - bow} ${lengthPx} ${at}`
        : `M${at} 0C${at + bow} ${third} ${at - bow} ${2 * third} ${at} ${lengthPx}`,
    )
    .join('');
}
