import { AGE_BANDS } from '@/lib/domain/garment/kinds';
import type { ViewGarment } from '@/lib/domain/revision/view';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import type { CountRow } from './specified-garment';

type ViewSize = ViewGarment['sizes'][number];

/** How many of each size, one row a band; where two styles are for one band, a row for each. */
export function countRows(locale: Locale, { sizes }: Pick<ViewGarment, 'sizes'>): CountRow[] {
  return AGE_BANDS.flatMap((ageBand) => {
    const ordered = sizes.filter((size) => size.ageBand === ageBand && size.quantity > 0);
    const firsts = ordered.filter((size, at) => ordered.findIndex(({ blankId }) => blankId === size.blankId) === at);
    return firsts.map((first) => {
      const counted = ordered.filter(({ blankId }) => blankId === first.blankId);
      return {
        key: first.blankId,
        band: bandWords(locale, first),
        sizes: counted.map(({ label, quantity }) => ({ label, quantity })),
        total: counted.reduce((sum, { quantity }) => sum + quantity, 0),
      };
    });
  });
}

function bandWords(locale: Locale, size: ViewSize): string {
  const t = translatorFor(locale, 'specification');
  const { ageBand, styleName, widthMeasure } = size;
  const band = widthMeasure === 'panelWidth' && ageBand === 'adult' ? t('band.none') : t(`band.${ageBand}`);
  return styleName === undefined ? band : t('bandOfStyle', { band, style: styleName });
}
