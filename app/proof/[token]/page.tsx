import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import { ProofSheet } from '@/components/proof/proof-sheet';
import { reachWords } from '@/components/proof/reach-words';
import { refusedWords } from '@/components/proof/refused-words';
import { type Sheet, sheetWords } from '@/components/proof/sheet-words';
import { WithdrawnSheet } from '@/components/proof/withdrawn-sheet';
import { defaultLocale, isLocale } from '@/lib/messages/locales';
import { type RefusedAnswer, refusedAnswer } from '@/lib/server/answers/refused-answers';
import { loadProof, type ProofView } from '@/lib/server/revisions/load-proof';
import { generateMetadata as wrongLinkMetadata } from './not-found';
import { openProof } from './open-proof';

type Asked = string | string[] | undefined;
type ProofPageProps = {
  params: Promise<{ token: string }>;
  searchParams: Promise<{ rev?: Asked; again?: Asked }>;
};

/** What a link shows, read once a request for the page and its title; null for everything that is not there. */
const readSheet = cache(async (token: string, rev: Asked, again: Asked) => {
  const access = await openProof(token, await headers());
  const proof = access && (await loadProof(access, revisionNumber(rev)));
  if (!proof) return null;
  const refused = typeof again === 'string' ? refusedAnswer(access, again) : null;
  // A look that was taken back is gone, but for the words somebody was just typing about it.
  if (proof.revision.state === 'withdrawn' && !refused) return null;
  return sheetOf(proof, refused, `/proof/${token}`);
});

export async function generateMetadata({ params, searchParams }: ProofPageProps): Promise<Metadata> {
  const [{ token }, { rev, again }] = await Promise.all([params, searchParams]);
  const sheet = await readSheet(token, rev, again);
  return sheet ? { title: { absolute: sheetWords(sheet).documentTitle } } : wrongLinkMetadata();
}

export default async function ProofPage({ params, searchParams }: ProofPageProps) {
  const [{ token }, { rev, again }] = await Promise.all([params, searchParams]);
  const sheet = await readSheet(token, rev, again);
  if (!sheet) notFound();
  const { locale, jobTitle, refused } = sheet;
  if (refused && sheet.state === 'withdrawn') {
    const words = refusedWords(locale, refused, { ...sheet, hasForm: false, asked: [] });
    return <WithdrawnSheet locale={locale} title={jobTitle} refused={words} reach={reachWords(locale, sheet)} />;
  }
  return <ProofSheet words={sheetWords(sheet)} />;
}

function sheetOf(proof: ProofView, refused: RefusedAnswer | null, path: string): Sheet {
  const { shop, job, contact, garments, standing, lettered, mayAnswer, myAnswer } = proof;
  const { locale, unit, revisionId, number, seal, state, currentNumber, note, notes, statement } = proof.revision;
  return {
    locale: isLocale(locale) ? locale : defaultLocale,
    unit,
    zone: job.zone,
    shop,
    jobTitle: job.title,
    neededAt: job.neededAt,
    contactName: contact.name,
    revisionId,
    number,
    seal,
    state,
    currentNumber,
    note,
    notes,
    statement,
    lettered,
    garments,
    given: myAnswer,
    mayAnswer,
    signedOff: standing === 'signedOff',
    path,
    formKey: randomUUID(),
    refused,
  };
}

/** The number asked for by `?rev=1`; 0, which no revision has, for anything that is not one; undefined when none is. */
function revisionNumber(rev: Asked): number | undefined {
  if (rev === undefined) return undefined;
  return typeof rev === 'string' && /^[1-9]\d{0,5}$/.test(rev) ? Number(rev) : 0;
}
