import type { Point } from '@/lib/domain/geometry/point';
import styles from './mark-cross.module.css';

type MarkCrossProps = {
  at: Point;
  letter: string;
  /** Px of the photograph to one px of the screen. */
  unit: number;
  inHand: boolean;
};

/** A cross whose middle is the point, with its letter beside it; a finger's width to take hold of. Drawn in px of the screen. */
export function MarkCross({ at, letter, unit, inHand }: MarkCrossProps) {
  return (
    <g transform={`translate(${at.x} ${at.y}) scale(${unit})`}>
      <circle r="22" className={styles.hold} />
      <path d="M-15 0H-4M4 0H15M0-15V-4M0 4V15" className={styles.halo} />
      <path d="M-15 0H-4M4 0H15M0-15V-4M0 4V15" className={styles.cross} />
      <circle r="15" className={styles.ring} data-ring="" />
      <g transform="translate(25 -25)">
        <rect x="-11" y="-11" width="22" height="22" className={inHand ? styles.inHand : styles.label} />
        <text y="5.5" textAnchor="middle" className={inHand ? styles.letterInHand : styles.letter} aria-hidden="true">
          {letter}
        </text>
      </g>
    </g>
  );
}
