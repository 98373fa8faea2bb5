import { between, distance, type Point } from '@/lib/domain/geometry/point';
import styles from './picture-tape.module.css';

type PictureTapeProps = {
  ends: readonly [Point, Point];
  /** What it reads; null while it reads nothing. */
  reading: string | null;
  /** Px of the photograph to one px of the screen. */
  unit: number;
};

const TAPE_PX = 9;
/** The width of a card with its words: the font has no narrower letters than these on average. */
const CHARACTER_PX = 8.6;
/** A tape shorter than this on the screen has no room for its card between the marks. */
const CARD_FROM_PX = 90;

/** A tape laid between two marks, its reading on a card in the middle. */
export function PictureTape({ ends: [from, to], reading, unit }: PictureTapeProps) {
  const middle = between(from, to, 0.5);
  const line = `M${from.x} ${from.y}L${to.x} ${to.y}`;
  const half = ((reading?.length ?? 0) * CHARACTER_PX) / 2 + 8;
  return (
    <g className={styles.tape}>
      <path d={line} className={styles.edge} strokeWidth={(TAPE_PX + 3) * unit} />
      <path d={line} className={styles.cloth} strokeWidth={TAPE_PX * unit} />
      {reading && distance(from, to) / unit > CARD_FROM_PX ? (
        <g transform={`translate(${middle.x} ${middle.y}) scale(${unit})`}>
          <rect x={-half} y="-14" width={2 * half} height="28" className={styles.card} />
          <text y="6" textAnchor="middle" className={styles.reading}>
            {reading}
          </text>
        </g>
      ) : null}
    </g>
  );
}
