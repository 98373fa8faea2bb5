import { useTranslations } from 'use-intl';
import { sharpnessAt, sharpnessLimits } from '@/lib/domain/art/sharpness';
import { formatLength, formatLimit } from '@/lib/domain/measure/format-length';
import type { LengthUnit, Micrometres } from '@/lib/domain/measure/length';
import { classNames } from '../ui/class-names';
import styles from './slips.module.css';

const MARKS = { sharp: '✓', fair: '△', soft: '△' } as const;

type SharpnessLineProps = {
  widthUm: Micrometres;
  /** Pixels across the ink that carry detail of their own. */
  inkWidthPx: number;
  unit: LengthUnit;
};

/** How large the picture prints sharp, and how it prints at its present width. */
export function SharpnessLine({ widthUm, inkWidthPx, unit }: SharpnessLineProps) {
  const t = useTranslations('table.slips');
  const { sharpUm, fairUm } = sharpnessLimits(inkWidthPx);
  const sharpness = sharpnessAt(inkWidthPx, widthUm);
  return (
    <p className={styles.sharpness}>
      <span className={classNames(styles.now, styles[sharpness])}>
        <span aria-hidden="true">{MARKS[sharpness]} </span>
        {t('now', { width: formatLength(widthUm, unit), sharpness })}
      </span>{' '}
      <span className={styles.limits}>
        {t('sharpness', { sharp: formatLimit(sharpUm, unit), fair: formatLimit(fairUm, unit) })}
      </span>
    </p>
  );
}
