import type { ListedPhotograph } from '@/components/photographs/photograph-list';
import { placeWords } from '@/components/photographs/place-words';
import { setToScale } from '@/lib/domain/layout/photograph';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { Locale } from '@/lib/messages/locales';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import type { BlankView } from '@/lib/server/blanks/load-blank';
import { flatToSetBy, type PhotographView } from '@/lib/server/blanks/photographs';
import type { Shop } from '@/lib/server/shop/read-shop';
import { removePhotographAction } from './actions';

/** Where the bench finds a photograph as screens show it. */
export function photographAddress({ sha256 }: Pick<PhotographView, 'sha256'>): string {
  return `/api/art/${sha256}/proxy.webp`;
}

/** What a photograph is of: `Front, M, Navy`. */
export function photographTitle(
  locale: Locale,
  { style }: Pick<BlankView, 'style'>,
  { side, sizeId, colourName }: PhotographView,
): string {
  const readings = translatorFor(locale, 'readings');
  const label = style.sizes.find((size) => size.sizeId === sizeId)?.label ?? '';
  return translatorFor(locale, 'photographs')('of', {
    side: readings(`side.${side}`),
    size: sizeWords(readings, { ageBand: style.ageBand, label }),
    colour: colourName,
  });
}

/** A photograph of a blank in words. */
export function listedPhotograph(
  { locale, unit }: Shop,
  blank: BlankView,
  photograph: PhotographView,
): ListedPhotograph {
  const t = translatorFor(locale, 'photographs');
  const { photographId, widthPx, heightPx, setting, side } = photograph;
  const by = flatToSetBy(blank.style, photograph.sizeId, side);
  const set = setting && by ? setToScale(setting, photograph, by.flat) : null;
  const title = photographTitle(locale, blank, photograph);
  const standing = () => {
    if (!setting) return t('notSet');
    if (!set?.ok) return t('noLonger');
    const [from, to] = setting.places.map((name) => placeWords(t, side, name));
    return t('isSet', { tape: formatLength(set.tapeUm, unit), from: from ?? '', to: to ?? '' });
  };
  return {
    photographId,
    src: photographAddress(photograph),
    alt: title,
    widthPx,
    heightPx,
    title,
    standing: standing(),
    isSet: set?.ok === true,
    href: `/blanks/${blank.blankId}/photographs/${photographId}`,
    setWords: t(setting ? 'setAgain' : 'set'),
    remove: removePhotographAction.bind(null, blank.blankId, photographId),
  };
}
