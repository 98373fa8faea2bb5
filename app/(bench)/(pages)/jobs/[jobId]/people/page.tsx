import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { ListHistory } from '@/components/roster/list-history';
import { PeopleEditor } from '@/components/roster/people-editor';
import { Disclosure } from '@/components/ui/disclosure';
import { FormNotice } from '@/components/ui/form-notice';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeading } from '@/components/ui/page-heading';
import { translatorFor } from '@/lib/messages/translator';
import { newId } from '@/lib/server/db/new-id';
import { listHistory } from '@/lib/server/people/list-history';
import { loadPeople } from '@/lib/server/people/load-people';
import { requireShop } from '@/lib/server/shop/read-shop';
import { takeCountsAction } from './actions';
import { shownChanges } from './shown-changes';

type PeoplePageProps = { params: Promise<{ jobId: string }> };

export async function generateMetadata({ params }: PeoplePageProps): Promise<Metadata> {
  const maker = await requireMaker();
  const [{ locale }, view] = await Promise.all([requireShop(), loadPeople(maker, (await params).jobId)]);
  return { title: view ? translatorFor(locale, 'people')('title', { title: view.title }) : undefined };
}

export default async function PeoplePage({ params }: PeoplePageProps) {
  const maker = await requireMaker();
  const { jobId } = await params;
  const [shop, view, history] = await Promise.all([requireShop(), loadPeople(maker, jobId), listHistory(maker, jobId)]);
  if (!view) notFound();
  const t = translatorFor(shop.locale, 'people');
  const page = `/jobs/${jobId}`;
  const { list, garments, letteredColumnIds, thisYear, locked } = view;
  return (
    <>
      <PageHeading above={view.title} lead={t('lead')} actions={<LinkButton href={page}>{t('back')}</LinkButton>}>
        {t('heading')}
      </PageHeading>
      {locked ? <FormNotice kind="note" title={t('locked')} /> : null}
      {garments.length === 0 ? (
        <FormNotice kind="look" title={t('noGarments')}>
          <a href={`${page}#add-garment`}>{t('noGarmentsLink')}</a>
        </FormNotice>
      ) : null}
      <PeopleEditor
        jobId={jobId}
        list={list}
        garments={garments}
        letteredColumnIds={letteredColumnIds}
        thisYear={thisYear}
        makerName={maker.name}
        locked={locked}
        firstLineId={newId()}
        takeCounts={takeCountsAction.bind(null, jobId)}
      />
      <Disclosure summary={t('history.title')}>
        <ListHistory changes={shownChanges(shop, view, history)} none={t('history.none')} />
      </Disclosure>
    </>
  );
}
