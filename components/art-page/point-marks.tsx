import type { Point } from '@/lib/domain/geometry/point';
import styles from './point-marks.module.css';

type PointMarksProps = {
  points: readonly Point[];
  unit: number;
  /** How a pointed-at place is called, counted from one. */
  label: (number: number) => string;
  onRemove: (index: number) => void;
};

/** Places that were pointed at. Pressed again, or with the Delete key, a place is taken back. */
export function PointMarks({ points, unit, label, onRemove }: PointMarksProps) {
  return points.map(({ x, y }, index) => (
    <g
      key={`${x}/${y}`}
      role="button"
      tabIndex={0}
      aria-label={label(index + 1)}
      data-own=""
      className={styles.mark}
      transform={`translate(${x + 0.5} ${y + 0.5}) scale(${unit})`}
      onClick={() => onRemove(index)}
      onKeyDown={(event) => {
        if (!['Enter', ' ', 'Delete', 'Backspace'].includes(event.key)) return;
        event.preventDefault();
        onRemove(index);
      }}
    >
      <circle r="16" className={styles.hold} />
      <circle r="8" className={styles.ring} />
      <path d="M-4 -4L4 4M4 -4L-4 4" className={styles.cross} />
    </g>
  ));
}
