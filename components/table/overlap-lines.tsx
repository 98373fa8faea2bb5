import { useMemo } from 'react';
import { useTranslations } from 'use-intl';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { printOverlaps } from '@/lib/domain/layout/print-overlap';
import type { SetType } from '@/lib/domain/layout/type-case';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import styles from './fit-lines.module.css';
import { groupWords } from './group-words';

type OverlapLinesProps = {
  layout: Pick<LayoutDocument, 'prints'>;
  chosen: ChosenPrint;
  unit: LengthUnit;
  /** Sets the longest of the list: it is what reaches furthest. */
  setType?: SetType | undefined;
};

/** The prints that the one in hand lies over, each with the sizes it does on. */
export function OverlapLines({ layout, chosen: { print, garment }, unit, setType }: OverlapLinesProps) {
  const t = useTranslations('table.fit');
  const readings = useTranslations('readings');
  const overlaps = useMemo(() => printOverlaps(layout, garment, print, setType), [layout, garment, print, setType]);
  return overlaps.map(({ other, sizes, mostUm }) => (
    <p key={other.printId} className={styles.trouble}>
      <b>
        <span aria-hidden="true">△ </span>
        {groupWords(readings, garment, sizes)}:
      </b>{' '}
      {t('overlaps', { print: other.name, length: formatLength(mostUm, unit) })}
    </p>
  ));
}
