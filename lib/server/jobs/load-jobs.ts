import type { LayoutDocument } from '@/lib/domain/layout/document';
import { EMPTY_LIST } from '@/lib/domain/people/list';
import type { OpenInList } from '@/lib/domain/people/list-check';
import type { NextStep } from '@/lib/domain/revision/next-step';
import type { AnswerRoute, RevisionState, Standing } from '@/lib/domain/revision/state';
import { type ArtView, listArt } from '../art/list-art';
import type { MakerAccess } from '../auth/maker-access';
import { reader } from '../db/database';
import { listOf, listsOf } from '../people/list-rows';
import { type MailStanding, mailOfRevisions } from '../revisions/revision-mail';
import { jobProgress, listKeyOf, progressRows, standingOf, stateOf, wholeVersion } from './job-standing';

/** A job as the bench lists it. */
export type JobRow = {
  readonly jobId: string;
  readonly title: string;
  readonly customerName: string;
  readonly neededAt: Date;
  readonly startedAt: Date;
  readonly step: NextStep;
};

/** An answer as the bench shows it. Name and words are null once erased. */
export type AnswerRow = {
  readonly contactName: string | null;
  readonly word: 'yes' | 'change';
  readonly how: AnswerRoute;
  readonly at: Date;
  readonly typedName: string | null;
  readonly words: string | null;
};

export type RevisionRow = {
  readonly revisionId: string;
  readonly number: number;
  readonly seal: string;
  readonly sentAt: Date;
  readonly state: RevisionState;
  readonly standing: Standing;
  readonly opened: boolean;
  readonly answers: readonly AnswerRow[];
  readonly mail: MailStanding;
};

export type JobView = {
  readonly jobId: string;
  readonly title: string;
  readonly customer: { readonly name: string; readonly email: string | null; readonly phone: string | null };
  readonly neededBy: string;
  readonly zone: string;
  readonly neededAt: Date;
  readonly notes: string;
  /** `version` is that of the layout alone, `wholeVersion` that of layout and list together. */
  readonly draft: { readonly version: number; readonly wholeVersion: number; readonly layout: LayoutDocument };
  /** What of the list of people has to be settled yet. */
  readonly open: OpenInList;
  readonly art: readonly ArtView[];
  readonly contacts: readonly {
    contactId: string;
    name: string | null;
    email: string | null;
    phone: string | null;
    mustSign: boolean;
  }[];
  readonly revisions: readonly RevisionRow[];
  readonly step: NextStep;
  readonly locked: boolean;
  readonly reopened: boolean;
};

/** All jobs on the bench, those needed soonest first. */
export async function listJobs(_maker: MakerAccess): Promise<JobRow[]> {
  const jobs = await reader().job.findMany({
    where: { archivedAt: null },
    orderBy: { neededAt: 'asc' },
    include: { customer: { select: { name: true } }, ...progressRows },
  });
  const lists = await listsOf(reader(), jobs.map(listKeyOf), 'keep');
  return jobs.map((job) => ({
    jobId: job.id,
    title: job.title,
    customerName: job.customer.name,
    neededAt: job.neededAt,
    startedAt: job.createdAt,
    step: jobProgress(job, lists.get(job.id) ?? EMPTY_LIST).step,
  }));
}

/** One job with its working copy, art, revisions and what happens next; null when there is none with this id. */
export async function loadJob(_maker: MakerAccess, jobId: string): Promise<JobView | null> {
  const job = await reader().job.findUnique({ where: { id: jobId }, include: { customer: true, ...progressRows } });
  if (!job) return null;
  const [art, mail, list] = await Promise.all([
    listArt(jobId),
    mailOfRevisions(jobId),
    listOf(reader(), listKeyOf(job), 'keep'),
  ]);
  const { layout, open, step, locked, reopened } = jobProgress(job, list);
  const names = new Map(job.contacts.map(({ id, name }) => [id, name]));
  return {
    jobId: job.id,
    title: job.title,
    customer: { name: job.customer.name, email: job.customer.email, phone: job.customer.phone },
    neededBy: job.neededByLocal,
    zone: job.timeZone,
    neededAt: job.neededAt,
    notes: job.notes,
    draft: { version: job.draft?.version ?? 0, wholeVersion: wholeVersion(job), layout },
    open,
    art,
    contacts: job.contacts.map(({ id, name, email, phone, mustSign }) => ({
      contactId: id,
      name,
      email,
      phone,
      mustSign,
    })),
    revisions: job.revisions.map((revision) => ({
      revisionId: revision.id,
      number: revision.number,
      seal: revision.seal,
      sentAt: revision.createdAt,
      state: stateOf(job, revision.number),
      standing: standingOf(job, revision),
      opened: revision.visits.length > 0,
      answers: revision.answers.map((answer) => answerRow(answer, names.get(answer.contactId) ?? null)),
      mail: mail.get(revision.id) ?? 'none',
    })),
    step,
    locked,
    reopened,
  };
}

/** An answer's row as the bench shows it. */
export function answerRow(
  answer: { word: string; how: string; at: Date; identity: { typedName: string; changeWords: string } | null },
  contactName: string | null,
): AnswerRow {
  return {
    contactName,
    word: answer.word === 'yes' ? 'yes' : 'change',
    how: answer.how as AnswerRoute,
    at: answer.at,
    typedName: answer.identity?.typedName ?? null,
    words: answer.identity?.changeWords ?? null,
  };
}
