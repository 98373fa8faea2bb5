import type { AnswerFacts, AnswerRoute, RevisionFacts } from '@/lib/domain/revision/state';
import { flatRead } from '../db/database';

/** One row a revision and answer: everything a proof page needs besides the kept view of the revision. */
type Row = {
  shopName: string;
  replyEmail: string | null;
  replyPhone: string | null;
  title: string;
  neededAt: Date;
  zone: string;
  revisionId: string;
  number: number;
  seal: string;
  sentAt: Date;
  viewMadeAt: Date;
  withdrawn: string | null;
  answerId: string | null;
  answerContact: string | null;
  word: string | null;
  how: string | null;
  answeredAt: Date | null;
  typedName: string | null;
  words: string | null;
};

export type ProofAnswer = AnswerFacts & {
  readonly at: Date;
  readonly typedName: string | null;
  readonly words: string | null;
};
export type ProofRevision = RevisionFacts & {
  readonly revisionId: string;
  readonly seal: string;
  readonly sentAt: Date;
  readonly viewMadeAt: Date;
  /** Oldest first. */
  readonly answers: readonly ProofAnswer[];
};
export type ProofRows = {
  readonly shop: { readonly name: string; readonly email: string | null; readonly phone: string | null };
  readonly job: { readonly title: string; readonly neededAt: Date; readonly zone: string };
  /** Newest first. */
  readonly revisions: readonly ProofRevision[];
};

/** All revisions of a job with their answers in one flat read; null while none was sent. */
export async function readProofRows(jobId: string): Promise<ProofRows | null> {
  const rows = await flatRead<Row>`
    SELECT s."name" AS "shopName", s."replyEmail", s."replyPhone",
           j."title", j."neededAt", j."timeZone" AS "zone",
           r."id" AS "revisionId", r."number", r."seal", r."createdAt" AS "sentAt", v."madeAt" AS "viewMadeAt",
           w."id" AS "withdrawn",
           a."id" AS "answerId", a."contactId" AS "answerContact", a."word", a."how", a."at" AS "answeredAt",
           i."typedName", i."changeWords" AS "words"
    FROM "Job" j
    JOIN "Shop" s ON s."slot" = 1
    JOIN "Revision" r ON r."jobId" = j."id"
    JOIN "RevisionView" v ON v."revisionId" = r."id"
    LEFT JOIN "RevisionEvent" w ON w."revisionId" = r."id" AND w."kind" = 'withdrawn'
    LEFT JOIN "Answer" a ON a."revisionId" = r."id"
    LEFT JOIN "AnswerIdentity" i ON i."answerId" = a."id"
    WHERE j."id" = ${jobId}
    ORDER BY r."number" DESC, a."at" ASC`;
  const [first] = rows;
  if (!first) return null;
  const revisions = new Map<string, ProofRevision & { answers: ProofAnswer[] }>();
  for (const row of rows) {
    const revision = revisions.get(row.revisionId) ?? {
      revisionId: row.revisionId,
      number: Number(row.number),
      seal: row.seal,
      sentAt: new Date(row.sentAt),
      viewMadeAt: new Date(row.viewMadeAt),
      withdrawn: row.withdrawn !== null,
      answers: [],
    };
    revisions.set(row.revisionId, revision);
    const answer = proofAnswer(row);
    if (answer) revision.answers.push(answer);
  }
  return {
    shop: { name: first.shopName, email: first.replyEmail, phone: first.replyPhone },
    job: { title: first.title, neededAt: new Date(first.neededAt), zone: first.zone },
    revisions: [...revisions.values()],
  };
}

function proofAnswer({ answerId, answerContact, word, how, answeredAt, typedName, words }: Row): ProofAnswer | null {
  if (!answerId || !answerContact || !answeredAt) return null;
  return {
    contactId: answerContact,
    word: word === 'yes' ? 'yes' : 'change',
    how: how as AnswerRoute,
    at: new Date(answeredAt),
    typedName,
    words,
  };
}
