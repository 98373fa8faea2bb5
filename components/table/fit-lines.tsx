import { useDeferredValue, useMemo } from 'react';
import { useTranslations } from 'use-intl';
import { v7 as newId } from 'uuid';
import type { Garment, LayoutDocument } from '@/lib/domain/layout/document';
import { fitSuggestions, isStopping, printFit } from '@/lib/domain/layout/layout-fit';
import { keyOf } from '@/lib/domain/layout/sizes';
import type { SetType } from '@/lib/domain/layout/type-case';
import { formatLength, formatLengthValue } from '@/lib/domain/measure/format-length';
import { type LengthUnit, type Micrometres, UM_PER_INCH, UM_PER_MM } from '@/lib/domain/measure/length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { fitSizes } from '@/lib/editor/commands/fit-print';
import { afterCommand } from '@/lib/editor/table-editor';
import { Button } from '../ui/button';
import { classNames } from '../ui/class-names';
import styles from './fit-lines.module.css';
import { groupWords } from './group-words';
import { type SaidFinding, saidFindings } from './said-findings';
import type { Change } from './use-reading';

type FitLinesProps = {
  chosen: ChosenPrint;
  unit: LengthUnit;
  change: Change;
  locked: boolean;
  /** Sets the longest of the list: lettering has to fit with it. */
  setType?: SetType | undefined;
};

/** How the print in hand fits every ordered size of its garment, and for sizes where it does not, a width that does. */
export function FitLines({ chosen, unit, change, locked, setType }: FitLinesProps) {
  const t = useTranslations('table.fit');
  const readings = useTranslations('readings');
  // Worked out when there is time: a print being dragged must not wait for it.
  const print = useDeferredValue(chosen.print);
  const { garment } = chosen;
  const { said, clear, suggestions } = useMemo(
    () => fitOn(print, garment, unit, setType),
    [print, garment, unit, setType],
  );
  return (
    <div className={styles.fit}>
      {clear.length > 0 ? (
        <p className={styles.clear}>
          <span aria-hidden="true">✓ </span>
          {t('clear', { sizes: groupWords(readings, garment, clear) })}
        </p>
      ) : null}
      {said.map((finding) => (
        <p key={`${finding.kind} ${finding.line}`} className={styles.trouble}>
          <b className={classNames(isStopping(finding) && styles.stops)}>
            <span aria-hidden="true">{isStopping(finding) ? '■' : '△'} </span>
            {groupWords(readings, garment, finding.sizes)}:
          </b>{' '}
          {t(`kind.${finding.kind}`, {
            line: t('line', { line: finding.line ?? 'none' }),
            length: lengthWords(finding, unit, (which, length) => t(which, { length })),
          })}
        </p>
      ))}
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

function fitOn(print: ChosenPrint['print'], garment: Garment, unit: LengthUnit, setType: SetType | undefined) {
  const here: Pick<LayoutDocument, 'garments'> = { garments: [garment] };
  const onIt = { ...print, garmentIds: [garment.garmentId] };
  const fits = printFit(here, onIt, setType);
  return {
    said: saidFindings(fits),
    clear: fits.filter(({ findings }) => findings.length === 0).map(({ offered }) => keyOf(offered)),
    suggestions: fitSuggestions(onIt, fits, unit, setType),
  };
}

/** The finest a tape reading shows. */
const FINEST_UM: Readonly<Record<LengthUnit, Micrometres>> = { in: UM_PER_INCH / 8, cm: UM_PER_MM };

/** `3/8 in`, `less than 1/8 in`; over several sizes `1/8–3/8 in`, or `up to 3/8 in` where it says how far ink reaches. */
function lengthWords(
  { kind, leastUm, mostUm }: SaidFinding,
  unit: LengthUnit,
  words: (which: 'upTo' | 'lessThan', length: string) => string,
): string {
  const [least, most] = [formatLengthValue(leastUm, unit), formatLength(mostUm, unit)];
  if (formatLengthValue(mostUm, unit) === '0') return words('lessThan', formatLength(FINEST_UM[unit], unit));
  if (least === formatLengthValue(mostUm, unit)) return most;
  return kind === 'nearSeam' || kind === 'withinCut' ? `${least}–${most}` : words('upTo', most);
}
