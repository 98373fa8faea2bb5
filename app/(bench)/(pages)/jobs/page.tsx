import type { Metadata } from 'next';
import { requireMaker } from '@/app/maker';
import { EmptyBench } from '@/components/bench/empty-bench';
import { JobCard } from '@/components/bench/job-card';
import { JobGroup } from '@/components/bench/job-group';
import { timeLeft } from '@/components/bench/time-left';
import { TimeTape } from '@/components/bench/time-tape';
import { defaultLocale } from '@/lib/messages/locales';
import { nearMomentWords } from '@/lib/messages/moments';
import { stepWords } from '@/lib/messages/step-words';
import { translatorFor } from '@/lib/messages/translator';
import { type JobRow, listJobs } from '@/lib/server/jobs/load-jobs';
import { requireShop } from '@/lib/server/shop/read-shop';
import { timeWords } from '../time-words';

export function generateMetadata(): Metadata {
  return { title: translatorFor(defaultLocale, 'bench')('title') };
}

export default async function JobsPage() {
  const maker = await requireMaker();
  const [shop, jobs] = await Promise.all([requireShop(), listJobs(maker)]);
  const t = translatorFor(shop.locale, 'bench');
  const now = new Date();
  const card = (job: JobRow) => {
    const left = timeLeft(job.neededAt, now);
    const moment = nearMomentWords(shop.locale, shop.timeZone, job.neededAt);
    return (
      <JobCard
        key={job.jobId}
        href={`/jobs/${job.jobId}`}
        title={job.title}
        customerName={job.customerName}
        sentence={stepWords(t, job.step)}
        isPressing={job.step.turn === 'customer' && left.isLittle}
        tape={
          <TimeTape
            left={left}
            words={timeWords(t, left)}
            moment={t(left.isLate ? 'wasNeededAt' : 'neededAt', { moment })}
          />
        }
      />
    );
  };
  return (
    <>
      <h1 className="visually-hidden">{t('title')}</h1>
      {jobs.length === 0 ? (
        <EmptyBench title={t('empty.title')} text={t('empty.text')} newJob={t('newJob')} />
      ) : (
        <>
          <JobGroup id="now" title={t('now')} none={t('nothingNow')}>
            {jobs.filter(({ step }) => step.turn === 'maker').map(card)}
          </JobGroup>
          <JobGroup id="waiting" title={t('waiting')} none={t('nothingWaiting')}>
            {jobs.filter(({ step }) => step.turn === 'customer').map(card)}
          </JobGroup>
        </>
      )}
    </>
  );
}
