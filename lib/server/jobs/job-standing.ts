import type { LayoutDocument } from '@/lib/domain/layout/document';
import { type NextStep, nextStep } from '@/lib/domain/revision/next-step';
import {
  type AnswerFacts,
  type AnswerRoute,
  currentNumber,
  layoutIsLocked,
  type RevisionState,
  revisionState,
  type Standing,
  standing,
} from '@/lib/domain/revision/state';
import { readStoredLayout } from '@/lib/server/drafts/stored-layout';

/** The rows everything about a job's progress is derived from; to be spread into a query on Job. */
export const progressRows = {
  draft: true,
  contacts: { orderBy: { createdAt: 'asc' } },
  revisions: {
    orderBy: { number: 'desc' },
    select: {
      id: true,
      number: true,
      seal: true,
      reason: true,
      draftVersion: true,
      createdAt: true,
      events: { select: { kind: true } },
      visits: { select: { openedAt: true }, take: 1 },
      answers: { orderBy: { at: 'asc' }, include: { identity: true } },
    },
  },
} as const;

/** A job's rows as far as its progress goes. */
export type ProgressRows = {
  readonly draft: { readonly json: string; readonly version: number } | null;
  readonly contacts: readonly { readonly id: string; readonly name: string | null; readonly mustSign: boolean }[];
  readonly revisions: readonly {
    readonly id: string;
    readonly number: number;
    readonly draftVersion: number;
    readonly events: readonly { readonly kind: string }[];
    readonly visits: readonly unknown[];
    readonly answers: readonly {
      readonly contactId: string;
      readonly word: string;
      readonly how: string;
      readonly at: Date;
      readonly identity: { readonly typedName: string; readonly changeWords: string } | null;
    }[];
  }[];
};

/** Where a job stands, derived: nothing of it is stored. */
export type JobProgress = {
  readonly layout: LayoutDocument;
  readonly current: { readonly revisionId: string; readonly number: number; readonly standing: Standing } | null;
  readonly step: NextStep;
  readonly locked: boolean;
  readonly reopened: boolean;
};

/** Derives where a job stands from its rows. Throws for a job without a working copy: each is made with one. */
export function jobProgress(rows: ProgressRows): JobProgress {
  if (!rows.draft) throw new Error('a job has no working copy');
  const layout = readStoredLayout(rows.draft.json);
  const current = currentRevision(rows);
  if (!current)
    return {
      layout,
      current: null,
      step: nextStep({ layout, current: null, reopened: false }),
      locked: false,
      reopened: false,
    };
  const currentStanding = standingOf(rows, current);
  const reopened = has(current, 'reopened');
  const step = nextStep({
    layout,
    current: {
      number: current.number,
      standing: currentStanding,
      opened: current.visits.length > 0,
      changeWords: current.answers.findLast(({ word }) => word === 'change')?.identity?.changeWords ?? '',
      edited: rows.draft.version !== current.draftVersion,
    },
    reopened,
  });
  const locked = layoutIsLocked(
    { number: current.number, standing: currentStanding },
    reopened ? current.number : null,
  );
  return {
    layout,
    current: { revisionId: current.id, number: current.number, standing: currentStanding },
    step,
    locked,
    reopened,
  };
}

/** The state of one of the job's revisions. */
export function stateOf(rows: Pick<ProgressRows, 'revisions'>, number: number): RevisionState {
  return revisionState(number, facts(rows));
}

/** Where one of the job's revisions stands with those who must sign. */
export function standingOf(
  rows: Pick<ProgressRows, 'contacts'>,
  revision: ProgressRows['revisions'][number],
): Standing {
  const mustSign = rows.contacts.filter((contact) => contact.mustSign).map(({ id }) => id);
  return standing(mustSign, revision.answers.map(answerFacts));
}

/** The job's current revision, or null before the first is sent. */
export function currentRevision<Row extends Pick<ProgressRows, 'revisions'>>(
  rows: Row,
): Row['revisions'][number] | null {
  const number = currentNumber(facts(rows));
  return rows.revisions.find((revision) => revision.number === number) ?? null;
}

function facts({ revisions }: Pick<ProgressRows, 'revisions'>) {
  return revisions.map((revision) => ({ number: revision.number, withdrawn: has(revision, 'withdrawn') }));
}

function has(revision: { readonly events: readonly { readonly kind: string }[] }, kind: string): boolean {
  return revision.events.some((event) => event.kind === kind);
}

function answerFacts({ contactId, word, how }: { contactId: string; word: string; how: string }): AnswerFacts {
  return { contactId, word: word === 'yes' ? 'yes' : 'change', how: how as AnswerRoute };
}
