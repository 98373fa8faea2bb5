import { useTranslations } from 'use-intl';
import { sharpnessAt, sharpnessLimits } from '@/lib/domain/art/sharpness';
import { formatLength, formatLimit } from '@/lib/domain/measure/format-length';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { classNames } from '../ui/class-names';
import styles from './slips.module.css';

const MARKS = { sharp: '✓', fair: '△', soft: '△' } as const;

/** How large the picture prints sharp, and how it prints at its present width. */
export function SharpnessLine({ chosen, unit }: { chosen: Pick<ChosenPrint, 'print' | 'group'>; unit: LengthUnit }) {
  const t = useTranslations('table.slips');
  const inkWidthPx = chosen.print.content.art.inkBox.width;
  const { sharpUm, fairUm } = sharpnessLimits(inkWidthPx);
  const sharpness = sharpnessAt(inkWidthPx, chosen.group.widthUm);
  return (
    <p className={styles.sharpness}>
      <span className={classNames(styles.now, styles[sharpness])}>
        <span aria-hidden="true">{MARKS[sharpness]} </span>
        {t('now', { width: formatLength(chosen.group.widthUm, unit), sharpness })}
      </span>{' '}
      <span className={styles.limits}>
        {t('sharpness', { sharp: formatLimit(sharpUm, unit), fair: formatLimit(fairUm, unit) })}
      </span>
    </p>
  );
}
