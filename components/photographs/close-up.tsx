import type { Point } from '@/lib/domain/geometry/point';
import type { PictureSize } from '@/lib/domain/layout/photograph';
import styles from './close-up.module.css';

type CloseUpProps = {
  src: string;
  picture: PictureSize;
  at: Point;
  /** Px of the photograph to one px of the screen. */
  unit: number;
};

const SIDE_PX = 120;
const TIMES = 4;

/** What lies under the mark in hand, four times as large, in the corner away from it: a finger hides the place itself. */
export function CloseUp({ src, picture: { widthPx, heightPx }, at, unit }: CloseUpProps) {
  const side = SIDE_PX * unit;
  const seen = side / TIMES;
  const x = at.x < widthPx / 2 ? widthPx - side : 0;
  const cross = `M${at.x - seen / 2} ${at.y}H${at.x + seen / 2}M${at.x} ${at.y - seen / 2}V${at.y + seen / 2}`;
  return (
    <g className={styles.closeUp} aria-hidden="true">
      <svg
        x={x}
        y="0"
        width={side}
        height={side}
        viewBox={`${at.x - seen / 2} ${at.y - seen / 2} ${seen} ${seen}`}
        overflow="hidden"
      >
        <rect x={at.x - seen / 2} y={at.y - seen / 2} width={seen} height={seen} className={styles.behind} />
        <image href={src} width={widthPx} height={heightPx} preserveAspectRatio="none" />
        <path d={cross} className={styles.halo} />
        <path d={cross} className={styles.cross} />
      </svg>
      <rect x={x} y="0" width={side} height={side} className={styles.frame} />
    </g>
  );
}
