import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import { ProofSheet } from '@/components/proof/proof-sheet';
import type { SheetContext } from '@/components/proof/sheet-context';
import { WithdrawnSheet } from '@/components/proof/withdrawn-sheet';
import { defaultLocale, isLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { refusedAnswer } from '@/lib/server/answers/refused-answers';
import { loadProof, type ProofView } from '@/lib/server/revisions/load-proof';
import { generateMetadata as wrongLinkMetadata } from './not-found';
import { openProof } from './open-proof';

type Asked = string | string[] | undefined;
type ProofPageProps = {
  params: Promise<{ token: string }>;
  searchParams: Promise<{ rev?: Asked; again?: Asked }>;
};

/** What a link shows, read once a request for the page and its title; null for everything that is not there. */
const readPage = cache(async (token: string, rev: Asked, again: Asked) => {
  const access = await openProof(token, await headers());
  const proof = access && (await loadProof(access, revisionNumber(rev)));
  if (!proof) return null;
  const refused = typeof again === 'string' ? refusedAnswer(access, again) : null;
  // A look that was taken back is gone, but for the words somebody was just typing about it.
  if (proof.revision.state === 'withdrawn' && !refused) return null;
  return { proof, refused, context: sheetContext(proof, `/proof/${token}`) };
});

export async function generateMetadata({ params, searchParams }: ProofPageProps): Promise<Metadata> {
  const [{ token }, { rev, again }] = await Promise.all([params, searchParams]);
  const page = await readPage(token, rev, again);
  if (!page) return wrongLinkMetadata();
  const t = translatorFor(page.context.locale, 'proof');
  const { jobTitle: job, number, shop } = page.context;
  const title = t('title', { job, look: t('look', { number: String(number) }) });
  const name = page.refused ? 'documentTitleRefused' : 'documentTitle';
  return { title: { absolute: t(name, { title, shop: shop.name }) } };
}

export default async function ProofPage({ params, searchParams }: ProofPageProps) {
  const [{ token }, { rev, again }] = await Promise.all([params, searchParams]);
  const page = await readPage(token, rev, again);
  if (!page) notFound();
  const { proof, refused, context } = page;
  if (refused && context.state === 'withdrawn') return <WithdrawnSheet context={context} refused={refused} />;
  const { revision, job, contact, garments, standing, lettered, mayAnswer, myAnswer } = proof;
  return (
    <ProofSheet
      context={context}
      contactName={contact.name}
      neededAt={job.neededAt}
      note={revision.note}
      notes={revision.notes}
      statement={revision.statement}
      lettered={lettered}
      garments={garments}
      given={myAnswer}
      mayAnswer={mayAnswer}
      signedOff={standing === 'signedOff'}
      revisionId={revision.revisionId}
      formKey={randomUUID()}
      refused={refused}
    />
  );
}

function sheetContext({ revision, shop, job }: ProofView, path: string): SheetContext {
  const { unit, number, seal, state, currentNumber } = revision;
  const locale = isLocale(revision.locale) ? revision.locale : defaultLocale;
  return { locale, unit, zone: job.zone, shop, jobTitle: job.title, number, seal, state, currentNumber, path };
}

/** The number asked for by `?rev=1`; 0, which no revision has, for anything that is not one; undefined when none is. */
function revisionNumber(rev: Asked): number | undefined {
  if (rev === undefined) return undefined;
  return typeof rev === 'string' && /^[1-9]\d{0,5}$/.test(rev) ? Number(rev) : 0;
}
