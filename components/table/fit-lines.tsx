import { useDeferredValue, useMemo } from 'react';
import { useTranslations } from 'use-intl';
import { v7 as newId } from 'uuid';
import type { Garment, LayoutDocument } from '@/lib/domain/layout/document';
import type { FitFinding } from '@/lib/domain/layout/fit';
import { fitSuggestions, isStopping, printFit, type SizeFit } from '@/lib/domain/layout/layout-fit';
import { keyOf, sizeName } from '@/lib/domain/layout/sizes';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { fitSizes } from '@/lib/editor/commands/fit-print';
import { afterCommand } from '@/lib/editor/table-editor';
import { sizeWords } from '@/lib/messages/reading-words';
import { Button } from '../ui/button';
import { classNames } from '../ui/class-names';
import styles from './fit-lines.module.css';
import { groupWords } from './group-words';
import type { Change } from './use-reading';

type FitLinesProps = { chosen: ChosenPrint; unit: LengthUnit; change: Change; locked: boolean };

/** How the print in hand fits every ordered size of its garment, and for sizes where it does not, a width that does. */
export function FitLines({ chosen, unit, change, locked }: FitLinesProps) {
  const t = useTranslations('table.fit');
  const readings = useTranslations('readings');
  // Worked out when there is time: a print being dragged must not wait for it.
  const print = useDeferredValue(chosen.print);
  const { garment } = chosen;
  const { troubled, clear, suggestions } = useMemo(() => fitOn(print, garment, unit), [print, garment, unit]);
  const words = (fits: readonly SizeFit[]) =>
    groupWords(
      readings,
      garment,
      fits.map(({ offered }) => keyOf(offered)),
    );
  return (
    <div className={styles.fit}>
      {clear.length > 0 ? (
        <p className={styles.clear}>
          <span aria-hidden="true">✓ </span>
          {t('clear', { sizes: words(clear) })}
        </p>
      ) : null}
      {troubled.map(({ offered, findings }) => {
        const worst = worstOf(findings);
        return worst ? (
          <p key={`${offered.blank.blankId}/${offered.size.sizeId}`} className={styles.trouble}>
            <b className={classNames(isStopping(worst) && styles.stops)}>
              <span aria-hidden="true">{isStopping(worst) ? '■' : '△'} </span>
              {sizeWords(readings, sizeName(offered))}:
            </b>{' '}
            {t(`kind.${worst.kind}`, { line: worst.line ?? 'none', length: formatLength(worst.um, unit) })}
          </p>
        ) : null;
      })}
      {locked
        ? null
        : suggestions.map((suggestion) => (
            <Button
              key={suggestion.groupId}
              kind="secondary"
              onClick={() => change((editor) => afterCommand(editor, fitSizes, { suggestion, newId }))}
            >
              {t('use', {
                width: formatLength(suggestion.widthUm, unit),
                sizes: groupWords(readings, garment, suggestion.sizes),
              })}
            </Button>
          ))}
    </div>
  );
}

function fitOn(print: ChosenPrint['print'], garment: Garment, unit: LengthUnit) {
  const here: Pick<LayoutDocument, 'garments'> = { garments: [garment] };
  const onIt = { ...print, garmentIds: [garment.garmentId] };
  const fits = printFit(here, onIt);
  return {
    troubled: fits.filter(({ findings }) => findings.length > 0),
    clear: fits.filter(({ findings }) => findings.length === 0),
    suggestions: fitSuggestions(onIt, fits, unit),
  };
}

/** The finding to say of a size: one that stops a revision before any other. */
function worstOf(findings: readonly FitFinding[]): FitFinding | undefined {
  return findings.find(isStopping) ?? findings[0];
}
