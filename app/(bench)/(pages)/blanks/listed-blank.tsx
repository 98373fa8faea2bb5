import { BlankCard } from '@/components/blanks/blank-card';
import { ColourChips } from '@/components/blanks/colour-chips';
import { OutlinePicture } from '@/components/blanks/outline-picture';
import { flatOf } from '@/lib/domain/layout/scene';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import type { BlankRow } from '@/lib/server/blanks/list-blanks';
import { blankToDraw, UNDYED_HEX } from './drawn-layout';

/** One blank of the list in words, with its outline in its middle size. */
export function ListedBlank({ locale, blank }: { locale: Locale; blank: BlankRow }) {
  const t = translatorFor(locale, 'blanks');
  const middle = Math.floor(blank.sizes.length / 2);
  const [size] = blankToDraw({ ...blank, sizes: blank.sizes.slice(middle, middle + 1) })?.sizes ?? [];
  return (
    <BlankCard
      href={`/blanks/${blank.blankId}`}
      name={blank.name}
      what={[kindWords(locale, blank), blank.fabric].filter(Boolean).join(' · ')}
      sizes={sizesWords(locale, blank.sizeLabels)}
      onHand={t('onHandLabel', { count: blank.onHand })}
      generic={blank.chartSource === 'starter' ? t('generic') : null}
      outline={
        size ? (
          <OutlinePicture flat={flatOf(blank.kind, size, 'front')} hex={blank.colours[0]?.hex ?? UNDYED_HEX} />
        ) : null
      }
      colours={
        <ColourChips colours={blank.colours} none={t('noColours')} more={(count) => t('moreColours', { count })} />
      }
    />
  );
}

/** `Crew tee, youth` */
export function kindWords(locale: Locale, { kind, ageBand }: Pick<BlankRow, 'kind' | 'ageBand'>): string {
  const t = translatorFor(locale, 'garment-words');
  return t('kindAndBand', { kind: t(`kind.${kind}`), band: ageBand });
}

function sizesWords(locale: Locale, labels: readonly string[]): string {
  const t = translatorFor(locale, 'blanks');
  const [first, last] = [labels[0], labels.at(-1)];
  if (first === undefined || last === undefined) return t('noSizes');
  return labels.length === 1 ? t('oneSize', { label: first }) : t('sizes', { first, last, count: labels.length });
}
