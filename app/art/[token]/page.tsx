import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import styles from '@/app/aside.module.css';
import { HandOverForm, type RefusedPicture } from '@/components/customer-art/hand-over-form';
import { SentPictures } from '@/components/customer-art/sent-pictures';
import { ReachShop } from '@/components/proof/reach-shop';
import { PageHeading } from '@/components/ui/page-heading';
import { Words } from '@/components/ui/words';
import { subjectsFor } from '@/lib/messages/catalogue';
import { translatorFor } from '@/lib/messages/translator';
import { loadArtPage } from '@/lib/server/art/load-art-page';
import { readShop } from '@/lib/server/shop/read-shop';
import { generateMetadata as wrongLinkMetadata } from './not-found';
import { openArtLink } from './open-art-link';
import { seenAtWords, sentPicture } from './sent-words';
import { shopWays } from './shop-ways';

type Asked = string | string[] | undefined;
type ArtPageProps = {
  params: Promise<{ token: string }>;
  searchParams: Promise<{ refused?: Asked; kind?: Asked }>;
};

/** Read once a request, for the page and its title: a wrong token counts once. */
const readPage = cache(async (token: string) => {
  const access = await openArtLink(token, await headers());
  const [shop, page] = await Promise.all([readShop(), access && loadArtPage(access)]);
  return shop && page ? { shop, page } : null;
});

export async function generateMetadata({ params }: ArtPageProps): Promise<Metadata> {
  const read = await readPage((await params).token);
  if (!read) return wrongLinkMetadata();
  return { title: { absolute: translatorFor(read.shop.locale, 'customer-art')('title') } };
}

/** Where a customer, or whoever has the picture, hands it in and sees at once what will become of it. */
export default async function ArtPage({ params, searchParams }: ArtPageProps) {
  const [{ token }, asked] = await Promise.all([params, searchParams]);
  const read = await readPage(token);
  if (!read) notFound();
  const { shop, page } = read;
  const t = translatorFor(shop.locale, 'customer-art');
  return (
    <main className={styles.aside}>
      <PageHeading above={t('for', { job: page.job.title })} lead={t('lead', { shop: shop.name })}>
        {t('title')}
      </PageHeading>
      <p>{t('best')}</p>
      <Words locale={shop.locale} messages={subjectsFor(shop.locale, ['art', 'customer-art'])} timeZone={page.job.zone}>
        <HandOverForm token={token} shop={shop.name} more={page.pictures.length > 0} first={refusedOf(asked)} />
      </Words>
      <SentPictures
        title={t('sent.title', { count: page.pictures.length })}
        seenAt={seenAtWords(shop, page)}
        pictures={page.pictures.map((art) => sentPicture(shop, page, token, art))}
      />
      <section aria-labelledby="questions">
        <h2 id="questions">{t('questions')}</h2>
        <ReachShop reach={shopWays(shop, page.job.title)} />
      </section>
    </main>
  );
}

/** Why a form sent without scripts was refused, as the address it was led back to says. */
function refusedOf({ refused, kind }: Awaited<ArtPageProps['searchParams']>): RefusedPicture | null {
  if (typeof refused !== 'string') return null;
  return { reason: refused, fileKind: typeof kind === 'string' ? kind : '' };
}
