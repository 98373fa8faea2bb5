import { classNames } from '../ui/class-names';
import type { TimeLeft } from './time-left';
import styles from './time-tape.module.css';

/** A whole tape: two weeks. All tapes have this scale, so that the longer one always is the longer time. */
const TAPE_HOURS = 14 * 24;
const DAY_TICK_HOURS = 24;
const FINE_TICK_HOURS = 6;
const HEIGHT = 24;

type TimeTapeProps = {
  left: TimeLeft;
  /** The time left in words: `6 days`. */
  words: string;
  /** When that is: `needed Thu, Nov 26, 2:00 PM`. */
  moment: string;
};

/** Time left as a piece of tape, in days or quarter days, with the words beside it. */
export function TimeTape({ left, words, moment }: TimeTapeProps) {
  const length = Math.min(left.hours, TAPE_HOURS);
  return (
    <div className={styles.tape}>
      <svg
        viewBox={`0 0 ${TAPE_HOURS} ${HEIGHT}`}
        preserveAspectRatio="none"
        aria-hidden="true"
        className={styles.drawing}
      >
        <rect width={length} height={HEIGHT} className={styles.piece} />
        {ticks(left, length).map((hour) => (
          <line
            key={hour}
            x1={hour}
            x2={hour}
            y2={hour % DAY_TICK_HOURS === 0 ? HEIGHT * 0.5 : HEIGHT * 0.28}
            className={styles.tick}
          />
        ))}
      </svg>
      <p className={styles.words}>
        <strong className={classNames(left.isLate && styles.late)}>{words}</strong>
        <span className={styles.moment}>{moment}</span>
      </p>
    </div>
  );
}

function ticks({ unit }: TimeLeft, length: number): number[] {
  const step = unit === 'days' ? DAY_TICK_HOURS : FINE_TICK_HOURS;
  return Array.from({ length: Math.max(0, Math.ceil(length / step) - 1) }, (_, index) => (index + 1) * step);
}
