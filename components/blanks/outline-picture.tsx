import { clothColours } from '@/lib/domain/garment/cloth-colours';
import type { FrozenFlat } from '@/lib/domain/garment/flat';
import styles from './outline-picture.module.css';

/** What each picture of an outline shows, mm: a 5XL hood fits, and all outlines are at one scale. */
const SHOWN_MM = 1_150;

/** A blank's front as an outline in one of its colours: which kind it is at a glance, and how large beside the others. */
export function OutlinePicture({ flat, hex }: { flat: Pick<FrozenFlat, 'outline' | 'box'>; hex: string }) {
  const { box } = flat;
  const left = box.x + box.width / 2 - SHOWN_MM / 2;
  const top = box.y + box.height / 2 - SHOWN_MM / 2;
  return (
    <svg viewBox={`${left} ${top} ${SHOWN_MM} ${SHOWN_MM}`} aria-hidden="true" className={styles.outline}>
      <path d={flat.outline} fill={hex} stroke={clothColours(hex).outline} strokeWidth={14} strokeLinejoin="round" />
    </svg>
  );
}
