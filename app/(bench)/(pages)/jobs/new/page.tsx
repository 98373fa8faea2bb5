import type { Metadata } from 'next';
import { requireMaker } from '@/app/maker';
import { JobForm } from '@/components/jobs/job-form';
import { PageHeading } from '@/components/ui/page-heading';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { requireShop } from '@/lib/server/shop/read-shop';
import { newJobAction } from './actions';

export function generateMetadata(): Metadata {
  return { title: translatorFor(defaultLocale, 'jobs.new')('title') };
}

export default async function NewJobPage() {
  await requireMaker();
  const shop = await requireShop();
  const t = translatorFor(shop.locale, 'jobs.new');
  return (
    <>
      <PageHeading lead={t('lead')}>{t('title')}</PageHeading>
      <JobForm
        action={newJobAction}
        typed={{}}
        zone={shop.timeZone.replaceAll('_', ' ')}
        submit={t('submit')}
        waiting={t('waiting')}
      />
    </>
  );
}
