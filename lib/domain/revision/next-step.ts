import type { LayoutDocument } from '../layout/document';
import { totalCount } from '../layout/sizes';
import { letteredColumns } from '../layout/with-people';
import { NOTHING_OPEN, type OpenInList } from '../people/list-check';
import type { Standing } from './state';

/** What happens next with a job, and whose turn it is. The catalogue makes one sentence of it. */
export type NextStep =
  | { readonly step: 'addGarment' | 'addPeople' | 'addCounts' | 'addArt' | 'sendFirst'; readonly turn: 'maker' }
  /** What the list of people leaves open is settled before anything is sent. */
  | { readonly step: 'checkList'; readonly turn: 'maker'; readonly findings: number; readonly unconfirmed: number }
  | { readonly step: 'sendChanged'; readonly turn: 'maker'; readonly number: number }
  | { readonly step: 'changeAsked'; readonly turn: 'maker'; readonly number: number; readonly words: string }
  | { readonly step: 'waiting'; readonly turn: 'customer'; readonly number: number; readonly opened: boolean }
  | { readonly step: 'press'; readonly turn: 'maker'; readonly number: number }
  | { readonly step: 'reopened'; readonly turn: 'maker'; readonly number: number };

/** What a job's next step is derived from. */
export type JobFacts = {
  readonly layout: Pick<LayoutDocument, 'garments' | 'prints' | 'people'>;
  /** What of the list of people has to be settled yet; nothing when left out. */
  readonly open?: OpenInList;
  readonly current: {
    readonly number: number;
    readonly standing: Standing;
    readonly opened: boolean;
    readonly changeWords: string;
    /** The working copy differs from what was sent. */
    readonly edited: boolean;
  } | null;
  readonly reopened: boolean;
};

/** The one thing that should happen next. */
export function nextStep({ layout, open = NOTHING_OPEN, current, reopened }: JobFacts): NextStep {
  if (current) return stepAfterSending(current, open, reopened);
  if (layout.garments.length === 0) return { step: 'addGarment', turn: 'maker' };
  if (layout.prints.length === 0) return { step: 'addArt', turn: 'maker' };
  if (lacksPeople(layout)) return { step: 'addPeople', turn: 'maker' };
  if (isOpen(open)) return checkList(open);
  if (totalCount(layout.garments) === 0) return { step: 'addCounts', turn: 'maker' };
  return { step: 'sendFirst', turn: 'maker' };
}

/** Lettering that prints what stands in the list, and nobody in it. */
function lacksPeople(layout: Pick<LayoutDocument, 'prints' | 'people'>): boolean {
  return layout.people.lines.length === 0 && letteredColumns(layout).length > 0;
}

function isOpen({ findings, unconfirmed }: OpenInList): boolean {
  return findings > 0 || unconfirmed > 0;
}

function checkList({ findings, unconfirmed }: OpenInList): NextStep {
  return { step: 'checkList', turn: 'maker', findings, unconfirmed };
}

function stepAfterSending(current: NonNullable<JobFacts['current']>, open: OpenInList, reopened: boolean): NextStep {
  const { number } = current;
  if (current.standing === 'signedOff') return { step: reopened ? 'reopened' : 'press', turn: 'maker', number };
  if (current.standing === 'changeAsked')
    return { step: 'changeAsked', turn: 'maker', number, words: current.changeWords };
  if (current.edited && isOpen(open)) return checkList(open);
  if (current.edited) return { step: 'sendChanged', turn: 'maker', number };
  return { step: 'waiting', turn: 'customer', number, opened: current.opened };
}

export type SendRefusal = 'noGarment' | 'noPrint' | 'noPeople' | 'listUnclear' | 'notConfirmed' | 'noCounts';

/** Why a layout cannot be sent yet, or null when it can. */
export function sendRefusal(
  layout: Pick<LayoutDocument, 'garments' | 'prints' | 'people'>,
  open: OpenInList = NOTHING_OPEN,
): SendRefusal | null {
  if (layout.garments.length === 0) return 'noGarment';
  if (layout.prints.length === 0) return 'noPrint';
  if (lacksPeople(layout)) return 'noPeople';
  if (open.stops > 0) return 'listUnclear';
  if (open.unconfirmed > 0) return 'notConfirmed';
  return totalCount(layout.garments) === 0 ? 'noCounts' : null;
}
