import type { AgeBand } from '@/lib/domain/garment/kinds';
import type { MeasureName } from '@/lib/domain/garment/measures';
import type { OtherMeasure } from '@/lib/domain/garment/style-faults';
import { formatLength, formatLengthApart } from '@/lib/domain/measure/format-length';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { sizeWords } from '@/lib/messages/reading-words';
import type { Translator } from '@/lib/messages/translator';
import type { ChartMistake } from './chart-fields';

/** What putting a mistake into words needs to know of the chart it is in. */
export type MistakeWordsOf = {
  readonly t: Translator<'blanks'>;
  readonly readings: Translator<'readings'>;
  readonly ageBand: AgeBand;
  readonly unit: LengthUnit;
};

/** A length and an amount as examples of what may be typed. */
const EXAMPLE = { in: '27 1/2', cm: '70.5' } as const;

/** One mistake in a chart in one sentence that names the size and the measure and says what to do. */
export function chartMistakeWords({ t, readings, ageBand, unit }: MistakeWordsOf, mistake: ChartMistake): string {
  const size =
    mistake.label === ''
      ? t('chart.number', { number: mistake.row })
      : sizeWords(readings, { ageBand, label: mistake.label });
  switch (mistake.code) {
    case 'labelMissing':
    case 'labelTooLong':
    case 'repeatedSize':
      return capitalised(t(`mistake.${mistake.code}`, { size }));
    case 'notALength':
    case 'notPositive': {
      const measure = t(`measure.${mistake.measure}`);
      return capitalised(t(`mistake.${mistake.code}`, { size, measure, text: mistake.text, example: EXAMPLE[unit] }));
    }
    case 'notAnAmount':
      return capitalised(t('mistake.notAnAmount', { size, text: mistake.text, amount: '4.20' }));
    case 'shrinks':
      return t('mistake.shrinks', {
        size,
        measure: t(`measure.${mistake.measure}`),
        length: formatLengthApart(mistake.um, mistake.before.um, unit),
        before: sizeWords(readings, { ageBand, label: mistake.before.label }),
        beforeLength: formatLengthApart(mistake.before.um, mistake.um, unit),
      });
    case 'missing':
      return t('mistake.missing', { size, measure: t(`measure.${mistake.measure}`) });
    default:
      return t(`mistake.${mistake.code}`, {
        size,
        reading: readingWords(t, mistake, unit),
        other: otherWords(t, mistake.other, unit),
      });
  }
}

/** A measure with its length; one that nobody typed is estimated, and what it follows from is to be looked at. */
function readingWords(
  t: Translator<'blanks'>,
  { measure, um }: { measure: MeasureName; um: number | null },
  unit: LengthUnit,
): string {
  const name = t(`measure.${measure}`);
  if (um === null) return t('mistake.readingEstimated', { measure: name });
  return t('mistake.reading', { measure: name, length: formatLength(um, unit) });
}

function otherWords(t: Translator<'blanks'>, other: OtherMeasure | null, unit: LengthUnit): string {
  if (!other) return t('otherMeasure.unnamed');
  const { measure, um, isEstimated } = other;
  const key = measure as keyof typeof NAMED;
  const name = key in NAMED ? t(`otherMeasure.${key}`) : t(`measure.${measure}`);
  return t(isEstimated ? 'mistake.otherEstimated' : 'mistake.other', { name, length: formatLength(um, unit) });
}

/** Measures that refusals compare with, for which there are words with an article. */
const NAMED = {
  acrossShoulder: true,
  chestWidth: true,
  armhole: true,
  frontNeckDrop: true,
  neckWidth: true,
  bodyLength: true,
  thighWidth: true,
  panelWidth: true,
} as const;

function capitalised(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
