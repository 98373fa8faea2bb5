import { randomBytes } from 'node:crypto';
import {
  type AnswerRefusal,
  type AnswerWord,
  answerRefusal,
  type Tick,
  ticksAsked,
} from '@/lib/domain/revision/answer';
import { canonicalBytes, sha256Hex } from '@/lib/domain/revision/canonical';
import { readEnvelope } from '@/lib/domain/revision/envelope';
import { asksForSoftTick } from '@/lib/domain/revision/soft-prints';
import type { AnswerRoute } from '@/lib/domain/revision/state';
import type { MakerAccess } from '../auth/maker-access';
import { reader, write } from '../db/database';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';
import { currentRevision, progressRows, standingOf, stateOf } from '../jobs/job-standing';
import type { LinkAccess } from '../links/link-access';
import { enqueueMail } from '../mail/outbox';
import { appendRecord } from '../record/append';

export type AnswerInput = {
  readonly word: AnswerWord;
  readonly ticks: readonly Tick[];
  readonly typedName: string;
  readonly words: string;
  readonly idempotencyKey: string;
};

export type AnswerResult =
  | { readonly ok: true }
  | {
      readonly ok: false;
      readonly reason: AnswerRefusal | 'replaced' | 'withdrawn' | 'alreadySignedOff' | 'mayNotSign' | 'noRevision';
      readonly currentNumber: number | null;
    };

/**
 * Takes the answer of the person a link belongs to. The revision they looked at must still be the current one: whether it
 * is, is read inside the transaction that writes the answer.
 */
export async function answerByLink(
  access: LinkAccess,
  input: AnswerInput & { readonly revisionId: string; readonly clientAddress: string },
): Promise<AnswerResult> {
  if (!access.may.sign) return { ok: false, reason: 'mayNotSign', currentNumber: null };
  const agreed = await readAgreed(access.jobId, { id: input.revisionId });
  const refused = answerRefusal(input, ticksAsked({ soft: agreed?.soft ?? false }));
  if (refused) return { ok: false, reason: refused, currentNumber: null };
  return keepAnswer(access.jobId, { id: input.revisionId }, agreed, {
    ...input,
    contactId: access.contactId,
    how: 'link',
    saidAt: null,
    recordedById: null,
  });
}

/** Records what somebody said by text, by phone or across the counter; it is marked as the maker's record of it. */
export async function recordAnswer(
  maker: MakerAccess,
  jobId: string,
  input: Omit<AnswerInput, 'ticks'> & {
    readonly number: number;
    readonly contactId: string;
    readonly how: Exclude<AnswerRoute, 'link'>;
    readonly saidAt: Date;
  },
): Promise<AnswerResult> {
  if (input.typedName.trim() === '') return { ok: false, reason: 'nameMissing', currentNumber: null };
  if (input.word === 'change' && input.words.trim() === '')
    return { ok: false, reason: 'wordsMissing', currentNumber: null };
  return keepAnswer(jobId, { number: input.number }, await readAgreed(jobId, { number: input.number }), {
    ...input,
    ticks: [],
    recordedById: maker.userId,
    clientAddress: '',
  });
}

type Stored = AnswerInput & {
  readonly contactId: string;
  readonly how: AnswerRoute;
  readonly saidAt: Date | null;
  readonly recordedById: string | null;
  readonly clientAddress: string;
};

/** Names one of a job's revisions. */
type WhichRevision = { readonly id: string } | { readonly number: number };

/** What a revision asks for; `soft`: that something comes out soft is ticked by itself. */
type Agreed = { readonly statementHash: string; readonly soft: boolean };

/** What was agreed to never changes, so it is read before the line of writes is held up. Null for no such revision. */
async function readAgreed(jobId: string, which: WhichRevision): Promise<Agreed | null> {
  const sealed = await reader().revision.findFirst({ where: { jobId, ...which }, select: { envelope: true } });
  if (!sealed) return null;
  const { statement, layout } = readEnvelope(sealed.envelope);
  return { statementHash: sha256Hex(statement), soft: asksForSoftTick(layout) };
}

function keepAnswer(jobId: string, which: WhichRevision, agreed: Agreed | null, answer: Stored): Promise<AnswerResult> {
  return write((tx) => storeAnswer(tx, jobId, which, answer, agreed?.statementHash ?? null));
}

async function storeAnswer(
  tx: Transaction,
  jobId: string,
  which: WhichRevision,
  answer: Stored,
  statementHash: string | null,
): Promise<AnswerResult> {
  const now = new Date();
  const touched = await tx.draft.updateMany({ where: { jobId }, data: { updatedAt: now } });
  if (touched.count === 0) return { ok: false, reason: 'noRevision', currentNumber: null };
  if (await tx.answer.findUnique({ where: { idempotencyKey: answer.idempotencyKey }, select: { id: true } }))
    return { ok: true };
  const job = await tx.job.findUniqueOrThrow({ where: { id: jobId }, include: progressRows });
  const revision = job.revisions.find((each) =>
    'number' in which ? each.number === which.number : each.id === which.id,
  );
  const currentNumber = currentRevision(job)?.number ?? null;
  if (!(revision && statementHash && job.contacts.some(({ id }) => id === answer.contactId)))
    return { ok: false, reason: 'noRevision', currentNumber };
  const state = stateOf(job, revision.number);
  if (state !== 'current') return { ok: false, reason: state, currentNumber };
  if (standingOf(job, revision) === 'signedOff') return { ok: false, reason: 'alreadySignedOff', currentNumber };

  const answerId = newId();
  const salt = randomBytes(32);
  const identity = {
    typedName: answer.typedName.trim(),
    changeWords: answer.word === 'change' ? answer.words.trim() : '',
    clientAddress: answer.clientAddress,
  };
  const identityHash = sha256Hex(canonicalBytes({ ...identity, salt: salt.toString('hex') }));
  await tx.answer.create({
    data: {
      id: answerId,
      revisionId: revision.id,
      contactId: answer.contactId,
      word: answer.word,
      how: answer.how,
      ticksJson: JSON.stringify(answer.ticks),
      statementHash,
      identityHash,
      idempotencyKey: answer.idempotencyKey,
      saidAt: answer.saidAt,
      recordedById: answer.recordedById,
      at: now,
    },
  });
  await tx.answerIdentity.create({ data: { answerId, salt, ...identity } });
  await appendRecord(
    tx,
    jobId,
    'answered',
    {
      answerId,
      revision: revision.number,
      seal: revision.seal,
      word: answer.word,
      how: answer.how,
      ticks: [...answer.ticks],
      contact: answer.contactId,
      identityHash,
    },
    now,
  );
  await enqueueMail(tx, { jobId, template: 'answerReceived', ids: { answerId } }, now);
  if (answer.how !== 'link') await enqueueMail(tx, { jobId, template: 'answerRecorded', ids: { answerId } }, now);
  return { ok: true };
}
