import type { AgeBand, WidthMeasure } from '@/lib/domain/garment/kinds';
import type { PrintReading } from '@/lib/domain/layout/readings';
import type { SizeName } from '@/lib/domain/layout/sizes';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { LengthUnit, Micrometres } from '@/lib/domain/measure/length';
import type { Translator } from './translator';

/** The `readings` subject: `translatorFor(locale, 'readings')` on the server, `useTranslations('readings')` in the browser. */
export type ReadingsTranslator = Translator<'readings'>;

/** What the tape says about a print, one phrase each: `10 in wide`, `3 in below the collar`, `4 in to wearer’s left`. */
export type ReadingWords = {
  readonly size: string;
  readonly sizeWithHeight: string;
  readonly drop: string;
  readonly across: string;
};

/** A print's reading in words, lengths in `unit`. */
export function readingWords(t: ReadingsTranslator, reading: PrintReading, unit: LengthUnit): ReadingWords {
  return {
    ...sizeSaid(t, reading, unit),
    drop: dropWords(t, reading, unit),
    across: acrossWords(t, reading.across, unit),
  };
}

/** `10 in wide`; of lettering `2 in tall letters`. */
function sizeSaid(
  t: ReadingsTranslator,
  { widthUm, heightUm, capHeightUm }: Pick<PrintReading, 'widthUm' | 'heightUm' | 'capHeightUm'>,
  unit: LengthUnit,
): Pick<ReadingWords, 'size' | 'sizeWithHeight'> {
  const width = formatLength(widthUm, unit);
  if (capHeightUm !== undefined) {
    const height = formatLength(capHeightUm, unit);
    return { size: t('letters', { height }), sizeWithHeight: t('lettersAndWidth', { height, width }) };
  }
  return {
    size: t('width', { width }),
    sizeWithHeight: t('widthAndHeight', { width, height: formatLength(heightUm, unit) }),
  };
}

/** The same in one line: `10 in wide, 3 in below the collar, in the middle`. */
export function readingLine(t: ReadingsTranslator, reading: PrintReading, unit: LengthUnit): string {
  const { size, drop, across } = readingWords(t, reading, unit);
  return t('inOneLine', { size, drop, across });
}

/** `3 in below the collar`, `8 in down from the top of the shoulder to the middle`. */
export function dropWords(
  t: ReadingsTranslator,
  { dropUm, measuredFrom, edge }: Pick<PrintReading, 'dropUm' | 'measuredFrom' | 'edge'>,
  unit: LengthUnit,
): string {
  const length = formatLength(Math.abs(dropUm), unit);
  return t(`drop.${measuredFrom}`, { length, direction: dropUm < 0 ? 'up' : 'down', edge });
}

/** `in the middle`, `4 in to wearer’s left`. */
export function acrossWords(t: ReadingsTranslator, across: PrintReading['across'], unit: LengthUnit): string {
  if (across.towards === 'centre') return t('across.centre');
  return t(`across.${across.towards}`, { length: formatLength(across.um, unit) });
}

/** How a supplier's label may name its age band itself: `YM`, `Y-2XL`, `Youth M`, `Toddler 2T`; in spans too: `YS–YXL`. */
const BAND_IN_LABEL: Readonly<Partial<Record<AgeBand, RegExp>>> = {
  youth: /\b(?:youth\s+|y[\s-]?(?=\d?x*[sml]\b))/gi,
  toddler: /\btoddlers?\s+/gi,
  infant: /\binfants?\s+/gi,
};

/** A size as it is said: `M`, `Youth M`, `M (Heavy tee)`; the band once, though the label names it too. */
export function sizeWords(t: ReadingsTranslator, { ageBand, label, styleName }: SizeName): string {
  const named = BAND_IN_LABEL[ageBand];
  const size = t(`size.${ageBand}`, { label: named ? label.replace(named, '') : label });
  return styleName === undefined ? size : t('sizeOfStyle', { size, style: styleName });
}

/** How wide a garment lies flat: `20 in across the chest`, `12 in across the thigh`, `15 in wide`. */
export function chestWords(
  t: ReadingsTranslator,
  chestUm: Micrometres,
  unit: LengthUnit,
  widthMeasure: WidthMeasure = 'chestWidth',
): string {
  const length = formatLength(chestUm, unit);
  if (widthMeasure === 'panelWidth') return t('width', { width: length });
  return widthMeasure === 'thighWidth' ? t('thigh', { length }) : t('chest', { length });
}
