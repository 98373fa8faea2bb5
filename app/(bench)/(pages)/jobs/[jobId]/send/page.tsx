import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { SceneSvg } from '@/components/flat/scene-svg';
import { JobColumns } from '@/components/jobs/job-columns';
import { SendForm } from '@/components/send/send-form';
import { SidePictures } from '@/components/send/side-pictures';
import { Statement } from '@/components/send/statement';
import { ThingsToDo } from '@/components/send/things-to-do';
import { Card } from '@/components/ui/card';
import { FormNotice } from '@/components/ui/form-notice';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeading } from '@/components/ui/page-heading';
import { PageSection } from '@/components/ui/page-section';
import { type Garment, LONGEST_FIT_NOTE } from '@/lib/domain/layout/document';
import { pictureFrame } from '@/lib/domain/layout/picture-frame';
import { shownSides } from '@/lib/domain/layout/scene';
import { keyOf, sizeName } from '@/lib/domain/layout/sizes';
import type { OutlineText } from '@/lib/domain/layout/tape';
import type { TypeCase } from '@/lib/domain/layout/type-case';
import { sceneWithTapes } from '@/lib/domain/revision/frozen-scenes';
import { clothWords } from '@/lib/messages/cloth-words';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import { newId } from '@/lib/server/db/new-id';
import { environment } from '@/lib/server/env/environment';
import { type JobView, loadJob } from '@/lib/server/jobs/load-jobs';
import { reach } from '@/lib/server/links/reach';
import { lastFitNotes } from '@/lib/server/revisions/last-fit-notes';
import { requireShop, type Shop } from '@/lib/server/shop/read-shop';
import { statementOf } from '@/lib/server/shop/statement';
import { layoutType } from '@/lib/server/text/layout-type';
import { loadOutliner } from '@/lib/server/text/outline-text';
import { proxyAddress } from '../art-address';
import { countsLine, sizeToDraw } from '../size-words';
import { sendAction } from './actions';
import { stopsToExplain } from './fit-words';
import { thingsMissing, thingsToLookAt } from './things-missing';

type SendPageProps = { params: Promise<{ jobId: string }> };

export async function generateMetadata({ params }: SendPageProps): Promise<Metadata> {
  const maker = await requireMaker();
  const [shop, job] = await Promise.all([requireShop(), loadJob(maker, (await params).jobId)]);
  return { title: job ? translatorFor(shop.locale, 'send')('title', { number: nextNumber(job) }) : undefined };
}

export default async function SendPage({ params }: SendPageProps) {
  const maker = await requireMaker();
  const { jobId } = await params;
  const [shop, job] = await Promise.all([requireShop(), loadJob(maker, jobId)]);
  if (!job) notFound();
  const outlineText = await loadOutliner();
  const type = await layoutType(job.draft.layout);
  const t = translatorFor(shop.locale, 'send');
  const number = nextNumber(job);
  const { garments } = job.draft.layout;
  const missing = thingsMissing(shop, job, type);
  const lastNotes = await lastFitNotes(maker, jobId);
  return (
    <>
      <PageHeading
        above={job.title}
        lead={t('lead', { customer: job.customer.name })}
        actions={<LinkButton href={`/jobs/${jobId}`}>{t('back', { title: job.title })}</LinkButton>}
      >
        {t('title', { number })}
      </PageHeading>
      <JobColumns
        broadAside
        main={
          <PageSection id="what" title={t('what')}>
            {garments.length === 0 ? <p>{t('nothingYet')}</p> : null}
            {garments.map((garment) => (
              <Card key={garment.garmentId}>
                <GarmentToSend shop={shop} job={job} garment={garment} outlineText={outlineText} type={type} />
              </Card>
            ))}
          </PageSection>
        }
        aside={
          missing.length > 0 ? (
            <FormNotice kind="look" title={t('missing.title', { number })}>
              <ThingsToDo things={missing} />
            </FormNotice>
          ) : (
            <>
              <LookNotice shop={shop} job={job} type={type} />
              <ReachNotice shop={shop} />
              <Card edge="ink">
                <SendForm
                  action={sendAction.bind(null, jobId)}
                  number={number}
                  customerName={job.customer.name}
                  draftVersion={job.draft.wholeVersion}
                  revisionId={newId()}
                  stops={stopsToExplain(shop, job, lastNotes, type?.longest)}
                  longestFitNote={LONGEST_FIT_NOTE}
                >
                  <Statement title={t('statement')}>{job.draft.layout.statement || statementOf(shop)}</Statement>
                  <p>{mailWords(shop, job)}</p>
                </SendForm>
              </Card>
            </>
          )
        }
      />
    </>
  );
}

type GarmentToSendProps = {
  shop: Shop;
  job: JobView;
  garment: Garment;
  outlineText: OutlineText;
  type: TypeCase | null;
};

function GarmentToSend({ shop, job, garment, outlineText, type }: GarmentToSendProps) {
  const t = translatorFor(shop.locale, 'send');
  const readings = translatorFor(shop.locale, 'readings');
  const shown = sizeToDraw(garment);
  const size = sizeWords(readings, sizeName(shown));
  const scenes = shownSides(job.draft.layout, garment.garmentId, shown.blank.kind).map((side) =>
    sceneWithTapes(
      job.draft.layout,
      { garmentId: garment.garmentId, size: keyOf(shown), side, lineId: null },
      shop.unit,
      outlineText,
      type?.sample,
    ),
  );
  const { box } = pictureFrame(scenes);
  const { name, cloth } = garment;
  return (
    <SidePictures
      name={name}
      cloth={clothWords(readings, cloth)}
      clothHex={cloth.hex}
      sides={scenes.map((scene) => {
        const words = readings(`side.${scene.side}`);
        const title = t('side', { side: words, garment: name, size });
        return {
          key: scene.side,
          words,
          picture: <SceneSvg scene={scene} box={box} href={proxyAddress} title={title} />,
        };
      })}
      drawnIn={t('drawnIn', { size })}
      counts={countsLine(shop.locale, garment)}
    />
  );
}

function LookNotice({ shop, job, type }: { shop: Shop; job: JobView; type: TypeCase | null }) {
  const sentences = thingsToLookAt(shop, job, type);
  if (sentences.length === 0) return null;
  return (
    <FormNotice kind="look" title={translatorFor(shop.locale, 'send')('look.title')}>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </FormNotice>
  );
}

function ReachNotice({ shop }: { shop: Shop }) {
  const t = translatorFor(shop.locale, 'send.reach');
  const { publicUrl: url } = environment();
  const far = reach(url);
  return (
    <FormNotice kind={far === 'everywhere' ? 'note' : 'look'} title={t(far)}>
      <p>{t(`${far}Text`, { url })}</p>
    </FormNotice>
  );
}

function mailWords(shop: Shop, { customer }: Pick<JobView, 'customer'>): string {
  const t = translatorFor(shop.locale, 'send');
  if (!customer.email) return t('goesNowhere', { customer: customer.name });
  return t(environment().smtpUrl === null ? 'goesToFile' : 'goesTo', { email: customer.email });
}

function nextNumber({ revisions }: Pick<JobView, 'revisions'>): number {
  return (revisions[0]?.number ?? 0) + 1;
}
