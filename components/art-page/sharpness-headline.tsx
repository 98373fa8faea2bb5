import { useTranslations } from 'use-intl';
import type { ArtFacts } from '@/lib/domain/art/art-facts';
import { realPxPerInch, sharpnessHeadline } from '@/lib/domain/art/findings/real-detail';
import { formatLimit } from '@/lib/domain/measure/format-length';
import type { LengthUnit, Micrometres } from '@/lib/domain/measure/length';
import styles from './sharpness-headline.module.css';

type SharpnessHeadlineProps = { facts: ArtFacts; widthUm: Micrometres; unit: LengthUnit };

/** The line above all findings: how large the picture prints well. */
export function SharpnessHeadline({ facts, widthUm, unit }: SharpnessHeadlineProps) {
  const t = useTranslations('art-findings');
  const page = useTranslations('art-page');
  const detail = { inkWidthPx: facts.inkBox.width, facts };
  const { sharpUm, fairUm } = sharpnessHeadline(detail);
  return (
    <div className={styles.headline}>
      <p className={styles.words}>
        {t('sharpness', { sharp: formatLimit(sharpUm, unit), fair: formatLimit(fairUm, unit) })}
      </p>
      <p className={styles.numbers}>
        {page('inkNow', {
          width: facts.inkBox.width,
          height: facts.inkBox.height,
          perInch: Math.floor(realPxPerInch(detail, widthUm)),
        })}
      </p>
    </div>
  );
}
