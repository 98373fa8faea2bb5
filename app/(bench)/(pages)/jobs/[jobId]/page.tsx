import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { timeLeft } from '@/components/bench/time-left';
import { TimeTape } from '@/components/bench/time-tape';
import { ArtFromPhone } from '@/components/jobs/art-from-phone';
import { ArtList } from '@/components/jobs/art-list';
import { ArtUpload } from '@/components/jobs/art-upload';
import { Facts } from '@/components/jobs/facts';
import { HistoryList } from '@/components/jobs/history-list';
import { JobColumns } from '@/components/jobs/job-columns';
import { ReopenForm } from '@/components/jobs/reopen-form';
import { RevisionList } from '@/components/jobs/revision-list';
import { Card } from '@/components/ui/card';
import { Disclosure } from '@/components/ui/disclosure';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeading } from '@/components/ui/page-heading';
import { PageSection } from '@/components/ui/page-section';
import { nearMomentWords } from '@/lib/messages/moments';
import { stepWords } from '@/lib/messages/step-words';
import { translatorFor } from '@/lib/messages/translator';
import { type JobView, loadJob } from '@/lib/server/jobs/load-jobs';
import { loadHistory } from '@/lib/server/record/history';
import { requireShop, type Shop } from '@/lib/server/shop/read-shop';
import { phoneCodeAction } from '../../../jobs/[jobId]/phone-code';
import { timeWords } from '../../time-words';
import { reopenAction } from './actions';
import { ArtLinkSection } from './art-link-section';
import { GarmentSection } from './garment-section';
import { PeopleSection } from './people-section';
import { primaryAction } from './primary-action';
import { shownArt } from './shown-art';
import { shownHistory } from './shown-history';
import { shownRevisions } from './shown-revisions';

type JobPageProps = { params: Promise<{ jobId: string }> };

export async function generateMetadata({ params }: JobPageProps): Promise<Metadata> {
  const job = await loadJob(await requireMaker(), (await params).jobId);
  return { title: job?.title };
}

export default async function JobPage({ params }: JobPageProps) {
  const maker = await requireMaker();
  const { jobId } = await params;
  const [shop, job, history] = await Promise.all([requireShop(), loadJob(maker, jobId), loadHistory(maker, jobId)]);
  if (!job) notFound();
  const t = translatorFor(shop.locale, 'jobs');
  const { layout } = job.draft;
  return (
    <>
      <JobHeading shop={shop} job={job} />
      {job.locked ? <LockedNotice shop={shop} job={job} /> : null}
      <JobColumns
        main={
          <>
            <GarmentSection maker={maker} shop={shop} job={job} />
            <PeopleSection shop={shop} job={job} />
            <PageSection id="art" title={t('art.title')}>
              {job.art.length === 0 ? <p>{t('art.none')}</p> : null}
              <ArtList art={shownArt(shop.locale, shop.unit, jobId, job.art, layout)} />
              <ArtUpload jobId={jobId} more={job.art.length > 0} />
              <ArtFromPhone jobId={jobId} makeCode={phoneCodeAction} />
              <ArtLinkSection maker={maker} shop={shop} job={job} />
            </PageSection>
          </>
        }
        aside={
          <>
            <PageSection id="revisions" title={t('revisions.title')}>
              {job.revisions.length === 0 ? <p>{t('revisions.none')}</p> : null}
              <RevisionList revisions={shownRevisions(shop.locale, job.zone, jobId, job.revisions)} />
            </PageSection>
            <CustomerSection shop={shop} job={job} />
            <PageSection id="record" title={t('history.title')}>
              <HistoryList
                entries={shownHistory(shop.locale, job.zone, history)}
                earlier={(count) => t('history.earlier', { count })}
              />
            </PageSection>
          </>
        }
      />
    </>
  );
}

function JobHeading({ shop, job }: { shop: Shop; job: JobView }) {
  const t = translatorFor(shop.locale, 'jobs.page');
  const bench = translatorFor(shop.locale, 'bench');
  const left = timeLeft(job.neededAt, new Date());
  const moment = nearMomentWords(shop.locale, job.zone, job.neededAt);
  const primary = primaryAction(shop.locale, job.jobId, job.step, job.art.length > 0);
  const table = `/jobs/${job.jobId}/table`;
  return (
    <>
      <PageHeading
        above={t('for', { customer: job.customer.name })}
        lead={stepWords(bench, job.step)}
        actions={
          <>
            {job.draft.layout.garments.length > 0 && primary.href !== table ? (
              <LinkButton href={table}>{t('table')}</LinkButton>
            ) : null}
            <LinkButton kind="primary" href={primary.href}>
              {primary.words}
            </LinkButton>
          </>
        }
      >
        {job.title}
      </PageHeading>
      <TimeTape
        left={left}
        words={timeWords(bench, left)}
        moment={bench(left.isLate ? 'wasNeededAt' : 'neededAt', { moment })}
      />
    </>
  );
}

function LockedNotice({ shop, job }: { shop: Shop; job: JobView }) {
  const t = translatorFor(shop.locale, 'jobs');
  const number = 'number' in job.step ? job.step.number : 0;
  return (
    <Card>
      <p>{t('page.locked', { number })}</p>
      <Disclosure summary={t('reopen.title')}>
        <ReopenForm action={reopenAction.bind(null, job.jobId)} number={number} />
      </Disclosure>
    </Card>
  );
}

function CustomerSection({ shop, job }: { shop: Shop; job: JobView }) {
  const t = translatorFor(shop.locale, 'jobs.page');
  const { name, email, phone } = job.customer;
  return (
    <PageSection id="customer" title={t('customer')}>
      <Facts
        facts={[
          { name: t('name'), value: name },
          { name: t('email'), value: email ? <a href={`mailto:${email}`}>{email}</a> : t('none') },
          { name: t('phone'), value: phone ? <a href={`tel:${phone}`}>{phone}</a> : t('none') },
          ...(job.notes ? [{ name: t('notes'), value: job.notes }] : []),
        ]}
      />
      <div>
        <LinkButton href={`/jobs/${job.jobId}/edit`}>{t('edit')}</LinkButton>
      </div>
    </PageSection>
  );
}
