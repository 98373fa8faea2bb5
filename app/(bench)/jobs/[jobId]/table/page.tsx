import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { Words } from '@/components/ui/words';
import { subjectsFor } from '@/lib/messages/catalogue';
import { stepWords } from '@/lib/messages/step-words';
import { translatorFor } from '@/lib/messages/translator';
import { listFonts } from '@/lib/server/fonts/list-fonts';
import { loadJob } from '@/lib/server/jobs/load-jobs';
import { requireShop } from '@/lib/server/shop/read-shop';
import { phoneCodeAction } from '../phone-code';
import { saveDraftAction } from './actions';
import { OpenTable } from './open-table';

type TablePageProps = { params: Promise<{ jobId: string }> };

export async function generateMetadata({ params }: TablePageProps): Promise<Metadata> {
  const [job, { locale }] = await Promise.all([loadJob(await requireMaker(), (await params).jobId), requireShop()]);
  return { title: job ? translatorFor(locale, 'table')('title', { title: job.title }) : undefined };
}

export default async function TablePage({ params }: TablePageProps) {
  const maker = await requireMaker();
  const { jobId } = await params;
  const [shop, job] = await Promise.all([requireShop(), loadJob(maker, jobId)]);
  if (!job) notFound();
  return (
    <Words
      locale={shop.locale}
      messages={subjectsFor(shop.locale, ['art', 'art-findings', 'form', 'lettering', 'phone', 'readings', 'table'])}
      timeZone={shop.timeZone}
    >
      <OpenTable
        serving={randomUUID()}
        job={{
          jobId,
          title: job.title,
          customerName: job.customer.name,
          // Placing art is what happens here: said above the table, it would soon not be true any more.
          nextWords: job.step.step === 'addArt' ? null : stepWords(translatorFor(shop.locale, 'bench'), job.step),
          nextNumber: (job.revisions[0]?.number ?? 0) + 1,
        }}
        unit={shop.unit}
        draft={job.draft}
        pictures={job.art.map(({ artId, name, ref, facts, notes }) => ({ artId, name, art: ref, facts, notes }))}
        locked={job.locked}
        fonts={await listFonts(maker)}
        phoneCode={phoneCodeAction}
        saveDraft={saveDraftAction.bind(null, jobId)}
      />
    </Words>
  );
}
