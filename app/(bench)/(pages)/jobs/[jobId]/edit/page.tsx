import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { JobForm } from '@/components/jobs/job-form';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeading } from '@/components/ui/page-heading';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { loadJob } from '@/lib/server/jobs/load-jobs';
import { requireShop } from '@/lib/server/shop/read-shop';
import { jobFields } from '../../job-form';
import { editJobAction } from './actions';

export function generateMetadata(): Metadata {
  return { title: translatorFor(defaultLocale, 'jobs.edit')('title') };
}

export default async function EditJobPage({ params }: { params: Promise<{ jobId: string }> }) {
  const maker = await requireMaker();
  const { jobId } = await params;
  const [shop, job] = await Promise.all([requireShop(), loadJob(maker, jobId)]);
  if (!job) notFound();
  const t = translatorFor(shop.locale, 'jobs.edit');
  const { customer, title, neededBy, notes } = job;
  return (
    <>
      <PageHeading above={title}>{t('title')}</PageHeading>
      <JobForm
        action={editJobAction.bind(null, jobId)}
        typed={jobFields({
          customerName: customer.name,
          customerEmail: customer.email,
          customerPhone: customer.phone,
          title,
          neededBy,
          notes,
        })}
        zone={job.zone.replaceAll('_', ' ')}
        submit={t('submit')}
        waiting={t('waiting')}
        aside={
          <LinkButton kind="quiet" href={`/jobs/${jobId}`}>
            {t('cancel')}
          </LinkButton>
        }
      />
    </>
  );
}
