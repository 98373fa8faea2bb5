import { DateTime } from 'luxon';
import type { Metadata } from 'next';
import { JobColumns } from '@/components/jobs/job-columns';
import { AnswerList } from '@/components/jobs/revision-list';
import { RecordAnswerForm } from '@/components/send/record-answer-form';
import { SealBlock } from '@/components/send/seal-block';
import { Statement } from '@/components/send/statement';
import { Card } from '@/components/ui/card';
import { Disclosure } from '@/components/ui/disclosure';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeading } from '@/components/ui/page-heading';
import { PageSection } from '@/components/ui/page-section';
import { shortSeal } from '@/lib/domain/revision/canonical';
import { nearMomentWords } from '@/lib/messages/moments';
import { translatorFor } from '@/lib/messages/translator';
import { newId } from '@/lib/server/db/new-id';
import type { RevisionView } from '@/lib/server/revisions/load-revision';
import type { Shop } from '@/lib/server/shop/read-shop';
import { shownAnswers } from '../../shown-revisions';
import { recordAction } from './actions';
import { type RevisionPageParams, revisionOfPage } from './load-page';
import { ReachSection } from './reach-section';
import { ShownGarments } from './shown-garments';
import { stateWords } from './state-words';

export async function generateMetadata(props: RevisionPageParams): Promise<Metadata> {
  const { shop, view } = await revisionOfPage(props);
  const { number } = view.revision;
  return { title: `${translatorFor(shop.locale, 'revision')('title', { number })} · ${view.jobTitle}` };
}

export default async function RevisionPage(props: RevisionPageParams) {
  const { shop, view } = await revisionOfPage(props);
  const t = translatorFor(shop.locale, 'revision');
  const { revision } = view;
  const mayAnswer = revision.state === 'current' && view.standing !== 'signedOff';
  return (
    <>
      <RevisionHeading shop={shop} view={view} />
      <JobColumns
        main={
          <>
            {mayAnswer ? <ReachSection shop={shop} view={view} isAsked /> : null}
            <PageSection id="answers" title={t('answers')}>
              <Card>
                {view.answers.length === 0 ? <p>{t('noAnswers')}</p> : null}
                <AnswerList answers={shownAnswers(shop.locale, view.zone, view.answers)} />
                {mayAnswer ? (
                  <Disclosure summary={t('record.title')}>
                    <RecordForm view={view} />
                  </Disclosure>
                ) : null}
              </Card>
            </PageSection>
            <PageSection id="shown" title={t('shown')}>
              <Card>
                <ShownGarments shop={shop} view={view} />
              </Card>
            </PageSection>
            {revision.state === 'current' && !mayAnswer ? <ReachSection shop={shop} view={view} /> : null}
          </>
        }
        aside={
          <>
            {revision.note ? <Statement title={t('note')}>{revision.note}</Statement> : null}
            <Statement title={t('statement')}>{revision.statement}</Statement>
            <PageSection id="seal" title={t('seal.title')}>
              <SealBlock
                words={{
                  text: t('seal.text'),
                  short: t('seal.short'),
                  full: t('seal.full'),
                  download: t('seal.download'),
                }}
                shortSeal={shortSeal(revision.seal)}
                seal={revision.seal}
                href={`/api/revisions/${revision.revisionId}/envelope.json`}
              />
            </PageSection>
          </>
        }
      />
    </>
  );
}

function RevisionHeading({ shop, view }: { shop: Shop; view: RevisionView }) {
  const t = translatorFor(shop.locale, 'revision');
  const { revision, jobId, jobTitle, standing } = view;
  const { number, state, currentNumber } = revision;
  const job = `/jobs/${jobId}`;
  const next =
    state === 'replaced'
      ? { href: `${job}/revisions/${currentNumber}`, words: t('toCurrent', { current: currentNumber ?? number }) }
      : standing === 'signedOff'
        ? { href: `${job}/revisions/${number}/specification`, words: t('toSpecification') }
        : standing === 'changeAsked'
          ? { href: `${job}/table`, words: t('toTable') }
          : null;
  return (
    <PageHeading
      above={`${jobTitle}, ${view.customerName}`}
      lead={`${stateWords(shop.locale, view)} ${t('sent', { moment: nearMomentWords(shop.locale, view.zone, revision.sentAt) })}.`}
      actions={
        <>
          <LinkButton href={job}>{t('back', { title: jobTitle })}</LinkButton>
          {next && state !== 'withdrawn' ? (
            <LinkButton kind="primary" href={next.href}>
              {next.words}
            </LinkButton>
          ) : null}
        </>
      }
    >
      {t('title', { number })}
    </PageHeading>
  );
}

function RecordForm({ view }: { view: RevisionView }) {
  const contacts = view.contacts.map(({ contactId, name }) => ({
    value: contactId,
    label: name ?? view.customerName,
  }));
  return (
    <RecordAnswerForm
      action={recordAction.bind(null, view.jobId, view.revision.number, view.zone)}
      contacts={contacts}
      typed={{ saidAt: DateTime.now().setZone(view.zone).toFormat("yyyy-MM-dd'T'HH:mm") }}
      zone={view.zone.replaceAll('_', ' ')}
      idempotencyKey={newId()}
    />
  );
}
