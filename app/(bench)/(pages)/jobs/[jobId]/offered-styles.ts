import type { OfferedStyle } from '@/components/garments/offered-style';
import { hasSecondCloth } from '@/lib/domain/garment/blank-style';
import type { StarterChart } from '@/lib/domain/garment/chart/chart';
import { TOP_CHARTS } from '@/lib/domain/garment/chart/top-charts';
import type { GarmentKind } from '@/lib/domain/garment/kinds';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import { middleOf } from '@/lib/domain/layout/sizes';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import type { BlankRow } from '@/lib/server/blanks/list-blanks';
import { bandWords } from './garment-words';
import { blankStyleId, starterName, starterStyleId } from './style-to-hang';

/** Kinds that are usually of a blend (common practice, no source); the others are of cotton. */
const BLENDS: readonly GarmentKind[] = ['crewSweatshirt', 'pulloverHood', 'zipHood', 'joggerLeg'];

/** What a garment can be hung from: the shop's own blanks by name, then every starter chart. */
export function offeredStyles(locale: Locale, blanks: readonly BlankRow[]): readonly [OfferedStyle, ...OfferedStyle[]] {
  const listed = blanks.filter(({ archived }) => !archived);
  // What cannot be drawn yet is not what a maker is after: it comes last.
  const own = listed.toSorted((a, b) => Number(a.sizes.length === 0) - Number(b.sizes.length === 0));
  const [first, ...more] = [
    ...own.map((blank) => ownStyle(locale, blank)),
    ...STARTER_CHARTS.map((chart) => starterStyle(locale, chart)),
  ];
  if (!first) throw new Error('there are no starter charts');
  return [first, ...more];
}

function ownStyle(locale: Locale, blank: BlankRow): OfferedStyle {
  const { name, kind, ageBand, fabric, colours, sizes } = blank;
  const t = translatorFor(locale, 'garments.add');
  return {
    styleId: blankStyleId(blank.blankId),
    shelf: 'own',
    kind,
    ageBand,
    name,
    fabric,
    colours,
    label: t('label', { name, sizes: sizesWords(locale, sizes) }),
    sizesLabel: t('label', { name, sizes: sizesWords(locale, sizes) }),
    secondCloth: secondClothWords(locale, kind),
    middle: middleStyleSize(sizes),
  };
}

function starterStyle(locale: Locale, chart: StarterChart): OfferedStyle {
  const t = translatorFor(locale, 'garments');
  const { kind, ageBand } = chart;
  const name = starterName(locale, chart);
  const sizes = sizesWords(locale, chart.sizes);
  const shelf = ageBand !== 'adult' ? 'young' : TOP_CHARTS.includes(chart) ? 'tops' : 'others';
  return {
    styleId: starterStyleId(chart),
    shelf,
    kind,
    ageBand,
    name: translatorFor(locale, 'garment-words')(`kind.${kind}`),
    fabric: t(`add.fabricUsual.${BLENDS.includes(kind) ? 'blend' : 'cotton'}`),
    colours: [],
    label: t('add.label', { name, sizes }),
    sizesLabel: t('add.bandSizes', { band: bandWords(locale, chart), sizes }),
    secondCloth: secondClothWords(locale, kind),
    middle: middleStyleSize(chart.sizes.map(({ id, ...size }) => ({ ...size, sizeId: id }))),
  };
}

/** What is of a kind's second cloth: `Sleeves and collar`; null for kinds that are of one. */
export function secondClothWords(locale: Locale, kind: GarmentKind): string | null {
  return hasSecondCloth(kind) ? translatorFor(locale, 'garment-words')('secondCloth.raglan') : null;
}

/** `S to 5XL`, `One size`, `no sizes yet`. */
function sizesWords(locale: Locale, sizes: readonly { readonly label: string }[]): string {
  const first = sizes[0]?.label;
  const last = sizes.at(-1)?.label;
  return translatorFor(locale, 'garments.add')('sizes', { count: sizes.length, first: first ?? '', last: last ?? '' });
}

function middleStyleSize(sizes: readonly NonNullable<OfferedStyle['middle']>[]): OfferedStyle['middle'] {
  const middle = middleOf(sizes);
  return middle ? { sizeId: middle.sizeId, label: middle.label, entered: middle.entered } : null;
}
