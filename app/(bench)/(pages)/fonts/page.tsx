import type { Metadata } from 'next';
import { requireMaker } from '@/app/maker';
import { FontCard } from '@/components/fonts/font-card';
import { FontList } from '@/components/fonts/font-list';
import { FontUpload } from '@/components/fonts/font-upload';
import { WithdrawForm } from '@/components/fonts/withdraw-form';
import { PageHeading } from '@/components/ui/page-heading';
import { PageSection } from '@/components/ui/page-section';
import type { FontRef } from '@/lib/domain/lettering/lettering';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { listFonts, listOwnFonts } from '@/lib/server/fonts/list-fonts';
import { requireShop } from '@/lib/server/shop/read-shop';
import { loadTypeEngine } from '@/lib/server/text/load-type-engine';
import { withdrawAction } from './actions';
import { embeddingKey } from './embedding-key';
import { sampleOf } from './sample-of';

export function generateMetadata(): Metadata {
  return { title: translatorFor(defaultLocale, 'fonts')('title') };
}

export default async function FontsPage() {
  const maker = await requireMaker();
  const [shop, { offered, behind }, own] = await Promise.all([requireShop(), listFonts(maker), listOwnFonts(maker)]);
  const engine = await loadTypeEngine(offered.map(({ ref }) => ref));
  const t = translatorFor(shop.locale, 'fonts');
  const sample = t('sample');
  const drawn = (ref: FontRef) => sampleOf(engine, ref, sample, t('drawn', { sample, family: ref.family }));
  return (
    <>
      <PageHeading lead={t('lead')}>{t('title')}</PageHeading>
      <PageSection id="own" title={t('own')}>
        {own.length === 0 ? <p>{t('ownNone')}</p> : null}
        <FontList name={t('own')}>
          {own.map(({ ref, fileName, embedding }) => (
            <FontCard
              key={ref.sha256}
              family={ref.family}
              style={ref.style}
              sample={drawn(ref)}
              action={
                <WithdrawForm
                  action={withdrawAction.bind(null, ref.sha256)}
                  label={t('withdrawOf', { family: ref.family, style: ref.style })}
                />
              }
            >
              <p>{t('fileName', { file: fileName })}</p>
              <p>{t(embeddingKey(embedding))}</p>
            </FontCard>
          ))}
        </FontList>
        <FontUpload />
        <p>{t('rights')}</p>
      </PageSection>
      <PageSection id="shipped" title={t('shipped')}>
        <p>{t('shippedLead')}</p>
        <FontList name={t('shipped')}>
          {offered
            .filter(({ kind }) => kind !== 'own')
            .map(({ ref, kind }) => (
              <FontCard key={ref.sha256} family={ref.family} style={ref.style} sample={drawn(ref)}>
                <p>
                  {t(`kind.${kind}`)} ·{' '}
                  <a href={`/api/fonts/${ref.sha256}/licence.txt`} aria-label={t('licenceOf', { family: ref.family })}>
                    {t('licence')}
                  </a>
                </p>
              </FontCard>
            ))}
        </FontList>
        <p>{t('behind', { fonts: behind.map(({ family }) => family).join(', ') })}</p>
      </PageSection>
    </>
  );
}
