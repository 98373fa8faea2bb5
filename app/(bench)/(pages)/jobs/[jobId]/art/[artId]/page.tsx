import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { ArtBench } from '@/components/art-page/art-bench';
import { ArtFamilyList } from '@/components/art-page/art-family-list';
import { FormNotice } from '@/components/ui/form-notice';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeading } from '@/components/ui/page-heading';
import { translatorFor } from '@/lib/messages/translator';
import { loadJob } from '@/lib/server/jobs/load-jobs';
import { requireShop } from '@/lib/server/shop/read-shop';
import { keepMendAction, suggestMendAction, useOnPrintsAction } from './actions';
import { clothsOf, familyOf, printsOfFamily, widthToCheckUm } from './art-family';
import { shownFamily, shownPicture, shownPrints } from './shown-family';

type ArtPageProps = {
  params: Promise<{ jobId: string; artId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export async function generateMetadata({ params }: ArtPageProps): Promise<Metadata> {
  const { jobId, artId } = await params;
  const job = await loadJob(await requireMaker(), jobId);
  const name = job?.art.find((each) => each.artId === artId)?.name ?? '';
  return { title: translatorFor((await requireShop()).locale, 'art-page')('title', { name }) };
}

/** One picture of a job: what the check found in it, and its mends. A mended picture is shown with all its steps. */
export default async function ArtPage({ params, searchParams }: ArtPageProps) {
  const maker = await requireMaker();
  const { jobId, artId } = await params;
  const [shop, job, said] = await Promise.all([requireShop(), loadJob(maker, jobId), searchParams]);
  const family = job && familyOf(job.art, artId);
  if (!family) notFound();
  const { upload, shown } = family;
  const t = translatorFor(shop.locale, 'art-page');
  const { layout } = job.draft;
  const prints = printsOfFamily(family, layout);
  const cloths = clothsOf(layout, prints);
  const [original, now] = await Promise.all([shownPicture(upload), shownPicture(shown)]);
  return (
    <>
      <PageHeading
        above={job.title}
        lead={
          shown.recipe === null ? t('lead', { width: shown.ref.widthPx, height: shown.ref.heightPx }) : t('leadMended')
        }
        actions={
          <>
            <LinkButton kind="quiet" href={`/jobs/${jobId}#art`}>
              {t('back')}
            </LinkButton>
            {layout.garments.length > 0 ? <LinkButton href={`/jobs/${jobId}/table`}>{t('table')}</LinkButton> : null}
          </>
        }
      >
        {shown.name}
      </PageHeading>
      <KeptNotice said={said} words={t} />
      {shown.redrawn ? <FormNotice kind="note" title={t('redrawn')} /> : null}
      {original && now ? (
        <ArtBench
          key={artId}
          art={{
            artId: upload.artId,
            name: shown.name,
            notes: upload.notes,
            original,
            opened: shown.recipe ? { steps: shown.recipe.steps, picture: now } : null,
          }}
          cloths={
            cloths.length > 0
              ? cloths
              : [
                  { name: t('white'), hex: '#FFFFFF' },
                  { name: t('black'), hex: '#1B1A15' },
                ]
          }
          hasGarments={cloths.length > 0}
          prints={shownPrints(shop.locale, layout, prints, artId)}
          widthUm={widthToCheckUm(prints)}
          unit={shop.unit}
          keep={keepMendAction.bind(null, jobId, upload.artId)}
          use={useOnPrintsAction.bind(null, jobId, artId)}
          suggest={suggestMendAction.bind(null, upload.artId, artId)}
        />
      ) : (
        <FormNotice kind="look" title={t('notChecked')} />
      )}
      {family.mends.length > 0 ? (
        <ArtFamilyList title={t('family')} pictures={shownFamily(shop.locale, jobId, family)} />
      ) : null}
    </>
  );
}

type KeptNoticeProps = {
  said: Record<string, string | string[] | undefined>;
  words: ReturnType<typeof translatorFor<'art-page'>>;
};

/** What came of keeping, said on the page of the picture that was kept. */
function KeptNotice({ said, words }: KeptNoticeProps) {
  if (said.kept !== 'now' && said.kept !== 'before') return null;
  const count = Number(said.prints);
  const used = Number.isInteger(count) && count > 0;
  return (
    <FormNotice
      kind="done"
      title={said.kept === 'before' ? words('alreadyKept') : used ? words('keptAndUsed', { count }) : words('kept')}
    />
  );
}
