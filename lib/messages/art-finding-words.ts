import { labOfHex } from '../domain/art/colour/lab';
import type { ArtFinding, FindingOf } from '../domain/art/findings/art-finding';
import { passingWidthUm } from '../domain/art/findings/passing-width';
import { type PressLimits, USUAL_PRESS_LIMITS } from '../domain/art/findings/press-limits';
import { formatLength } from '../domain/measure/format-length';
import { type LengthUnit, type Micrometres, UM_PER_MM } from '../domain/measure/length';
import type { Translator } from './translator';

/** The `art-findings` subject: `translatorFor(locale, 'art-findings')` or `useTranslations('art-findings')`. */
export type FindingTranslator = Translator<'art-findings'>;

/** A finding in words. */
export type FindingWords = {
  /** A few words, to head it with. */
  readonly title: string;
  /** What will happen on the shirt and what to do, one sentence. */
  readonly maker: string;
  /** The same for whoever sent the picture, without the trade's terms. */
  readonly customer: string;
  /** The number behind it; null where there is none. */
  readonly number: string | null;
};

/** How the picture is printed: the width that was asked about, the shop's unit, and what it needs to be sharp. */
export type FindingPlace = {
  readonly widthUm: Micrometres;
  readonly unit: LengthUnit;
  /** The supplier's; common practice where left out. */
  readonly limits?: Pick<PressLimits, 'sharpPxPerInch'>;
};

type Values = Record<string, string | number>;

/** Puts a finding into words. */
export function artFindingWords(t: FindingTranslator, finding: ArtFinding, place: FindingPlace): FindingWords {
  const { code } = finding;
  const values = valuesOf(t, finding, place);
  const hasNumber = code !== 'wholeRectangle' && code !== 'colour';
  return {
    title: t(`title.${code}`, values),
    maker: t(`maker.${code}`, values),
    customer: t(`customer.${code}`, values),
    number: hasNumber ? t(`number.${code}`, values) : null,
  };
}

function valuesOf(t: FindingTranslator, finding: ArtFinding, { widthUm, unit, limits }: FindingPlace): Values {
  const { code, numbers, mends } = finding;
  const passes = formatLength(passingWidthUm(finding, unit) ?? widthUm, unit);
  switch (code) {
    case 'blurry':
      return {
        level: numbers.level,
        width: formatLength(widthUm, unit),
        passes,
        redraw: mends.includes('redraw') ? 'yes' : 'no',
        px: Math.floor(numbers.pxPerInch),
        sharp: (limits ?? USUAL_PRESS_LIMITS).sharpPxPerInch,
      };
    case 'whiteBox':
      return {
        tone: toneOf(numbers.hex),
        hex: numbers.hex,
        percent: percentOf(numbers.share),
        enclosed: numbers.enclosed,
      };
    case 'junk':
    case 'specks':
      return numbers;
    case 'vanishes':
      return vanishingValues(t, finding);
    case 'haze':
      return { percent: percentOf(numbers.share), reach: inMm(t, numbers.reachUm) };
    case 'thinStrokes':
    case 'thinGaps':
      return {
        passes,
        thicken: mends.includes('thicken') ? 'yes' : 'no',
        thinnest: inMm(t, numbers.thinnestUm),
        least: inMm(t, numbers.leastUm),
      };
    case 'tooLarge':
      return {
        than: numbers.than,
        passes,
        width: formatLength(numbers.widthUm, unit),
        height: formatLength(numbers.heightUm, unit),
      };
    case 'enlarged':
      return { times: numbers.times.toFixed(1) };
    case 'emptyMargin':
      return { percent: percentOf(numbers.share) };
    case 'colour':
      return { from: numbers.from };
    case 'wholeRectangle':
      return {};
  }
}

/** Cloths that hide much the same share of the ink are named together, by the largest share. */
function vanishingValues(t: FindingTranslator, { numbers, mends }: FindingOf<'vanishes'>): Values {
  const { cloths } = numbers;
  const percents = cloths.map(({ share }) => percentOf(share));
  return {
    cloths: t('and', {
      count: cloths.length,
      last: cloths.at(-1)?.name ?? '',
      others: cloths
        .slice(0, -1)
        .map(({ name }) => name)
        .join(', '),
    }),
    percent: Math.max(...percents),
    recolour: mends.includes('recolour') ? 'yes' : 'no',
    each: cloths.map(({ name, share }) => t('number.vanishesOn', { name, percent: percentOf(share) })).join('; '),
  };
}

/** The backing as it is called: most are white, and nobody says the name of a hex. */
function toneOf(hex: string): 'white' | 'black' | 'other' {
  const { l, a, b } = labOfHex(hex);
  if (Math.hypot(a, b) > 8) return 'other';
  if (l > 92) return 'white';
  return l < 12 ? 'black' : 'other';
}

function percentOf(share: number): number {
  return Math.max(1, Math.round(share * 100));
}

/** Strokes are told in millimetres in every shop; under the limit they never read as the limit itself. */
function inMm(t: FindingTranslator, um: Micrometres): string {
  const hundredths = Math.floor((um * 100) / UM_PER_MM);
  return t('mm', { length: String(Math.max(1, hundredths) / 100) });
}
