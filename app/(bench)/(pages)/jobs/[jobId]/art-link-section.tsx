import { ArtLinkForm } from '@/components/jobs/art-link-form';
import { ArtLinkLive } from '@/components/jobs/art-link-live';
import { CopyLink } from '@/components/send/copy-link';
import { QrPicture } from '@/components/send/qr-picture';
import { ReachPerson, TextMessage } from '@/components/send/reach-person';
import { textMessageAddress } from '@/components/send/text-message-address';
import { Disclosure } from '@/components/ui/disclosure';
import { nearMomentWords } from '@/lib/messages/moments';
import { translatorFor } from '@/lib/messages/translator';
import { artLinkOf } from '@/lib/server/art/art-link';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import type { JobView } from '@/lib/server/jobs/load-jobs';
import { qrCode } from '@/lib/server/qr/qr-code';
import type { Shop } from '@/lib/server/shop/read-shop';
import { endArtLinkAction, makeArtLinkAction } from './art-link-actions';
import { ReachLine } from './reach-line';

type ArtLinkSectionProps = { maker: MakerAccess; shop: Shop; job: JobView };

/** The link where the customer hands in pictures: made, passed on, taken back. */
export async function ArtLinkSection({ maker, shop, job }: ArtLinkSectionProps) {
  const t = translatorFor(shop.locale, 'customer-art.bench');
  const link = await artLinkOf(maker, job.jobId);
  return (
    <Disclosure id="art-link" summary={t('title')} open={link !== null}>
      {link ? (
        <LiveLink shop={shop} job={job} link={link} />
      ) : (
        <ReachPerson text={t('why')}>
          <ArtLinkForm action={makeArtLinkAction.bind(null, job.jobId)} words={t('make')} waiting={t('making')} />
        </ReachPerson>
      )}
    </Disclosure>
  );
}

type LiveLinkProps = { shop: Shop; job: JobView; link: { readonly url: string; readonly expiresAt: Date } };

function LiveLink({ shop, job, link: { url, expiresAt } }: LiveLinkProps) {
  const t = translatorFor(shop.locale, 'customer-art.bench');
  const words = t('textBody', { shop: shop.name, job: job.title, url });
  return (
    <ArtLinkLive>
      <ReachLine shop={shop} />
      <ReachPerson>
        <CopyLink label={t('linkFor', { name: job.customer.name })} url={url} />
        <TextMessage href={textMessageAddress(job.customer.phone, words)} words={t('text')} hint={t('textHint')} />
        <QrPicture code={qrCode(url)} words={t('qr')} />
      </ReachPerson>
      <p>{t('until', { moment: nearMomentWords(shop.locale, job.zone, expiresAt) })}</p>
      <ArtLinkForm
        action={endArtLinkAction.bind(null, job.jobId)}
        words={t('end')}
        waiting={t('ending')}
        hint={t('endHint')}
      />
    </ArtLinkLive>
  );
}
