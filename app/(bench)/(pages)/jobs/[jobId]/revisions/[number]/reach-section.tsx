import { CopyLink } from '@/components/send/copy-link';
import { QrPicture } from '@/components/send/qr-picture';
import { ReachPair, ReachPerson, TextMessage } from '@/components/send/reach-person';
import { RefreshWhile } from '@/components/send/refresh-while';
import { SendPicture } from '@/components/send/send-picture';
import { textMessageAddress } from '@/components/send/text-message-address';
import { Card } from '@/components/ui/card';
import { FormNotice } from '@/components/ui/form-notice';
import { PageSection } from '@/components/ui/page-section';
import { translatorFor } from '@/lib/messages/translator';
import { environment } from '@/lib/server/env/environment';
import { qrCode } from '@/lib/server/qr/qr-code';
import type { RevisionView } from '@/lib/server/revisions/load-revision';
import type { Shop } from '@/lib/server/shop/read-shop';
import { ReachLine } from '../../reach-line';

type RevisionProps = { shop: Shop; view: RevisionView };

type ReachSectionProps = RevisionProps & {
  /** An answer is waited for, so what became of the mail matters. */
  isAsked?: boolean;
};

/** Every way to get a revision before the customer: the mail, the link, a text message, a code to point at, a picture. */
export function ReachSection({ shop, view, isAsked = false }: ReachSectionProps) {
  const t = translatorFor(shop.locale, 'revision');
  const { revision, jobTitle } = view;
  return (
    <PageSection id="reach" title={t('reach')}>
      {isAsked ? <MailLine shop={shop} view={view} /> : null}
      <ReachLine shop={shop} />
      <ReachPair>
        {view.contacts.map((contact) => (
          <ContactCard key={contact.contactId} shop={shop} view={view} contact={contact} />
        ))}
        <Card>
          <ReachPerson title={t('picture')} text={t('pictureText')}>
            <SendPicture
              src={`/api/revisions/${revision.revisionId}/picture.png`}
              alt={t('pictureAlt', { number: revision.number })}
              fileName={t('pictureFile', { job: jobTitle, number: revision.number })}
            />
          </ReachPerson>
        </Card>
      </ReachPair>
    </PageSection>
  );
}

function MailLine({ shop, view }: RevisionProps) {
  const t = translatorFor(shop.locale, 'revision.mail');
  const emails = view.contacts.flatMap(({ email }) => (email ? [email] : []));
  const kind = emails.length === 0 ? 'none' : view.mail;
  const words = { email: emails.join(', '), customer: view.customerName, folder: environment().mailDir };
  if (kind === 'none' && emails.length > 0) return null;
  return (
    <>
      <RefreshWhile underWay={kind === 'queued'} />
      <FormNotice kind={kind === 'sent' ? 'done' : kind === 'queued' ? 'note' : 'look'} title={t(kind, words)} />
    </>
  );
}

function ContactCard({ shop, view, contact }: RevisionProps & { contact: RevisionView['contacts'][number] }) {
  const t = translatorFor(shop.locale, 'revision');
  const name = contact.name ?? view.customerName;
  if (contact.url === null) return <p>{t('linkGone', { name })}</p>;
  const words = t('textBody', { shop: view.shopName, job: view.jobTitle, url: contact.url });
  return (
    <Card>
      <ReachPerson>
        <CopyLink label={t('linkFor', { name })} url={contact.url} />
        <TextMessage href={textMessageAddress(contact.phone, words)} words={t('text')} hint={t('textHint')} />
        <QrPicture code={qrCode(contact.url)} words={t('qr')} />
      </ReachPerson>
    </Card>
  );
}
