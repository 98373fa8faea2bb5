import { sizeName } from '../domain/layout/sizes';
import type { SizeSaid } from '../domain/layout/with-people';
import type { Locale } from './locales';
import { sizeWords } from './reading-words';
import { translatorFor } from './translator';

/** How a list says a size: as everywhere, but an adult one by its band too where a younger one has the same letters. */
export function sizeSaid(locale: Locale): SizeSaid {
  const readings = translatorFor(locale, 'readings');
  const t = translatorFor(locale, 'people');
  return (offered, others) => {
    const size = sizeWords(readings, sizeName(offered));
    const isAdult = offered.blank.ageBand === 'adult';
    const isShared = others.some(
      ({ blank, size: other }) => blank.ageBand !== 'adult' && other.label === offered.size.label,
    );
    return isAdult && isShared ? t('adultSize', { size }) : size;
  };
}
