import type { Metadata } from 'next';
import { requireMaker } from '@/app/maker';
import { BlankList } from '@/components/blanks/blank-list';
import { EmptyBlanks } from '@/components/blanks/empty-blanks';
import { Disclosure } from '@/components/ui/disclosure';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeading } from '@/components/ui/page-heading';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { listBlanks } from '@/lib/server/blanks/list-blanks';
import { requireShop } from '@/lib/server/shop/read-shop';
import { ListedBlank } from './listed-blank';

export function generateMetadata(): Metadata {
  return { title: translatorFor(defaultLocale, 'blanks')('title') };
}

export default async function BlanksPage() {
  const maker = await requireMaker();
  const [shop, blanks] = await Promise.all([requireShop(), listBlanks(maker)]);
  const t = translatorFor(shop.locale, 'blanks');
  const listed = blanks.filter(({ archived }) => !archived);
  const archived = blanks.filter((blank) => blank.archived);
  const card = (blank: (typeof blanks)[number]) => (
    <ListedBlank key={blank.blankId} locale={shop.locale} blank={blank} />
  );
  return (
    <>
      <PageHeading
        lead={t('lead')}
        actions={
          listed.length === 0 ? null : (
            <LinkButton kind="secondary" href="/blanks/new">
              {t('new')}
            </LinkButton>
          )
        }
      >
        {t('title')}
      </PageHeading>
      {listed.length === 0 ? (
        <EmptyBlanks title={t('empty.title')} text={t('empty.text')} begin={t('empty.begin')} />
      ) : (
        <BlankList name={t('list')}>{listed.map(card)}</BlankList>
      )}
      {archived.length === 0 ? null : (
        <Disclosure summary={t('archived', { count: archived.length })}>
          <BlankList name={t('archived', { count: archived.length })}>{archived.map(card)}</BlankList>
        </Disclosure>
      )}
    </>
  );
}
