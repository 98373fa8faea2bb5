import type { LayoutDocument } from '@/lib/domain/layout/document';
import { garmentsOnOffer, letteredColumns, withPeople } from '@/lib/domain/layout/with-people';
import type { PeopleList } from '@/lib/domain/people/list';
import type { OpenInList } from '@/lib/domain/people/list-check';
import { listChecks, openInList } from '@/lib/domain/people/list-checks';
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
import { type ListKey, type RosterRow, rosterRow } from '@/lib/server/people/list-rows';

/** The rows everything about a job's progress is derived from; to be spread into a query on Job. */
export const progressRows = {
  draft: true,
  roster: rosterRow,
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
  readonly id: string;
  readonly roster: RosterRow;
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
  /** The working copy with the people of the list in it, and the counts they come to. */
  readonly layout: LayoutDocument;
  /** What of the list has to be settled yet. */
  readonly open: OpenInList;
  readonly current: { readonly revisionId: string; readonly number: number; readonly standing: Standing } | null;
  readonly step: NextStep;
  readonly locked: boolean;
  readonly reopened: boolean;
};

/** What names the state of a job's list. */
export function listKeyOf({ id, roster }: Pick<ProgressRows, 'id' | 'roster'>): ListKey {
  return { id, roster };
}

/** The version of a job's working copy, layout and list together: it rises with every change to either. */
export function wholeVersion({ draft, roster }: Pick<ProgressRows, 'draft' | 'roster'>): number {
  return (draft?.version ?? 0) + (roster?.version ?? 0);
}

/**
 * Derives where a job stands from its rows and its list of people. Throws for a job without a working copy: each is made
 * with one.
 */
export function jobProgress(rows: ProgressRows, list: PeopleList): JobProgress {
  if (!rows.draft) throw new Error('a job has no working copy');
  const stored = readStoredLayout(rows.draft.json);
  const layout = withPeople(stored, list);
  const open = openOf(list, rows.draft.json, stored);
  const current = currentRevision(rows);
  if (!current)
    return {
      layout,
      open,
      current: null,
      step: nextStep({ layout, open, current: null, reopened: false }),
      locked: false,
      reopened: false,
    };
  const currentStanding = standingOf(rows, current);
  const reopened = has(current, 'reopened');
  const step = nextStep({
    layout,
    open,
    current: {
      number: current.number,
      standing: currentStanding,
      opened: current.visits.length > 0,
      changeWords: current.answers.findLast(({ word }) => word === 'change')?.identity?.changeWords ?? '',
      edited: wholeVersion(rows) !== current.draftVersion,
    },
    reopened,
  });
  const locked = isLocked(rows);
  return {
    layout,
    open,
    current: { revisionId: current.id, number: current.number, standing: currentStanding },
    step,
    locked,
    reopened,
  };
}

/** Whether a sign-off holds the working copy as it is. */
export function isLocked(rows: Pick<ProgressRows, 'contacts' | 'revisions'>): boolean {
  const current = currentRevision(rows);
  if (!current) return false;
  const { number } = current;
  return layoutIsLocked({ number, standing: standingOf(rows, current) }, has(current, 'reopened') ? number : null);
}

/** What was found open in a state of a list, beside the working copy it was held against. */
const opened = new WeakMap<PeopleList, { readonly draftJson: string; readonly open: OpenInList }>();

function openOf(list: PeopleList, draftJson: string, stored: LayoutDocument): OpenInList {
  const known = opened.get(list);
  if (known?.draftJson === draftJson) return known.open;
  const checks = listChecks(list, {
    garments: garmentsOnOffer(stored, ({ size }) => size.label),
    letteredColumnIds: letteredColumns(stored),
    thisYear: new Date().getFullYear(),
  });
  const open = openInList(list, checks);
  opened.set(list, { draftJson, open });
  return open;
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
