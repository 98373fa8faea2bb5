import type { Spot } from '@/lib/domain/art/art-facts';
import type { Severity } from '@/lib/domain/art/findings/art-finding';
import { classNames } from '../ui/class-names';
import styles from './spot-marks.module.css';

/** A finding's number with its places, as the list beside the picture has it. */
export type NumberedSpots = { readonly number: number; readonly severity: Severity; readonly spots: readonly Spot[] };

type SpotMarksProps = {
  findings: readonly NumberedSpots[];
  /** The number whose places stand out; null while none is chosen. */
  chosen: number | null;
  /** Px of the picture to one px of the screen. */
  unit: number;
};

/** The least a place is drawn as, px of the screen: a speck of one pixel must still be found. */
const LEAST_SIDE = 12;
/** A picture full of numbers says nothing: so many places of a finding are marked until it is chosen. */
const MOST_UNCHOSEN = 3;

/** Where on the picture each finding is. The list says the same in words, so nothing here is read out. */
export function SpotMarks({ findings, chosen, unit }: SpotMarksProps) {
  return (
    <g aria-hidden="true" className={styles.marks}>
      {findings.map((finding) => {
        const isChosen = finding.number === chosen;
        // What is only good to know is marked when it is asked for: it would lie over what has to be seen.
        if (!isChosen && (chosen !== null || finding.severity === 'notes')) return null;
        const spots = isChosen ? finding.spots : finding.spots.slice(0, MOST_UNCHOSEN);
        return (
          <g key={finding.number} className={classNames(styles[finding.severity], isChosen && styles.chosen)}>
            {spots.map((spot) => (
              <SpotMark key={`${spot.x}/${spot.y}`} spot={spot} number={finding.number} unit={unit} />
            ))}
          </g>
        );
      })}
    </g>
  );
}

function SpotMark({ spot, number, unit }: { spot: Spot; number: number; unit: number }) {
  const width = Math.max(spot.width, LEAST_SIDE * unit);
  const height = Math.max(spot.height, LEAST_SIDE * unit);
  const x = spot.x + (spot.width - width) / 2;
  const y = spot.y + (spot.height - height) / 2;
  return (
    <>
      <rect x={x} y={y} width={width} height={height} className={styles.halo} />
      <rect x={x} y={y} width={width} height={height} className={styles.line} />
      <g transform={`translate(${Math.max(x, 0)} ${Math.max(y, 0)}) scale(${unit})`}>
        <rect x="-1" y="-1" width="20" height="20" className={styles.flag} />
        <text x="9" y="14" textAnchor="middle" className={styles.number}>
          {number}
        </text>
      </g>
    </>
  );
}
