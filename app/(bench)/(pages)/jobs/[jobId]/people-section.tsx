import { LinkButton } from '@/components/ui/link-button';
import { PageSection } from '@/components/ui/page-section';
import { translatorFor } from '@/lib/messages/translator';
import type { JobView } from '@/lib/server/jobs/load-jobs';
import type { Shop } from '@/lib/server/shop/read-shop';

type PeopleSectionProps = { shop: Pick<Shop, 'locale'>; job: JobView };

/** Who is on the job's list, what of it is open, and the way to it. */
export function PeopleSection({ shop, job }: PeopleSectionProps) {
  const t = translatorFor(shop.locale, 'people.section');
  const { lines } = job.draft.layout.people;
  const { findings, unconfirmed } = job.open;
  const sentences = [
    lines.length === 0 ? t('none') : t('some', { count: lines.length }),
    ...(findings > 0 ? [t('open', { count: findings })] : []),
    ...(unconfirmed > 0 ? [t('unconfirmed', { count: unconfirmed })] : []),
  ];
  return (
    <PageSection id="people" title={t('title')}>
      <p>{sentences.join(' ')}</p>
      <div>
        <LinkButton href={`/jobs/${job.jobId}/people`}>{t(lines.length === 0 ? 'add' : 'openList')}</LinkButton>
      </div>
    </PageSection>
  );
}
