import { AddGarmentForm } from '@/components/garments/add-garment-form';
import { Card } from '@/components/ui/card';
import { PageSection } from '@/components/ui/page-section';
import { translatorFor } from '@/lib/messages/translator';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { listBlanks } from '@/lib/server/blanks/list-blanks';
import type { JobView } from '@/lib/server/jobs/load-jobs';
import type { Shop } from '@/lib/server/shop/read-shop';
import { addGarmentAction } from './actions';
import { JobGarment } from './job-garment';
import { offeredStyles } from './offered-styles';

type GarmentSectionProps = { maker: MakerAccess; shop: Shop; job: JobView };

/** The job's garments, and a form for one more. */
export async function GarmentSection({ maker, shop, job }: GarmentSectionProps) {
  const t = translatorFor(shop.locale, 'garments');
  const { garments } = job.draft.layout;
  const blanks = await listBlanks(maker);
  const offered = offeredStyles(shop.locale, blanks);
  return (
    <PageSection id="garments" title={t('title')}>
      {garments.length === 0 ? <p>{t('none')}</p> : null}
      {garments.map((garment) => (
        <JobGarment
          key={garment.garmentId}
          maker={maker}
          shop={shop}
          job={job}
          garment={garment}
          blanks={blanks}
          offered={offered}
        />
      ))}
      {job.locked ? null : (
        <Card id="add-garment">
          <AddGarmentForm
            // A new form for each next garment: what was typed for the last one is not meant again.
            key={garments.map(({ garmentId }) => garmentId).join(' ')}
            action={addGarmentAction.bind(null, job.jobId)}
            offered={offered}
            unit={shop.unit}
            open={garments.length === 0}
          />
        </Card>
      )}
    </PageSection>
  );
}
