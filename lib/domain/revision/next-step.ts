import type { LayoutDocument } from '../layout/document';
import { totalCount } from '../layout/sizes';
import type { Standing } from './state';

/** What happens next with a job, and whose turn it is. The catalogue makes one sentence of it. */
export type NextStep =
  | { readonly step: 'addGarment' | 'addCounts' | 'addArt' | 'sendFirst'; readonly turn: 'maker' }
  | { readonly step: 'sendChanged'; readonly turn: 'maker'; readonly number: number }
  | { readonly step: 'changeAsked'; readonly turn: 'maker'; readonly number: number; readonly words: string }
  | { readonly step: 'waiting'; readonly turn: 'customer'; readonly number: number; readonly opened: boolean }
  | { readonly step: 'press'; readonly turn: 'maker'; readonly number: number }
  | { readonly step: 'reopened'; readonly turn: 'maker'; readonly number: number };

/** What a job's next step is derived from. */
export type JobFacts = {
  readonly layout: Pick<LayoutDocument, 'garments' | 'prints'>;
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
export function nextStep({ layout, current, reopened }: JobFacts): NextStep {
  if (current) return stepAfterSending(current, reopened);
  if (layout.garments.length === 0) return { step: 'addGarment', turn: 'maker' };
  if (layout.prints.length === 0) return { step: 'addArt', turn: 'maker' };
  if (totalCount(layout.garments) === 0) return { step: 'addCounts', turn: 'maker' };
  return { step: 'sendFirst', turn: 'maker' };
}

function stepAfterSending(current: NonNullable<JobFacts['current']>, reopened: boolean): NextStep {
  const { number } = current;
  if (current.standing === 'signedOff') return { step: reopened ? 'reopened' : 'press', turn: 'maker', number };
  if (current.standing === 'changeAsked')
    return { step: 'changeAsked', turn: 'maker', number, words: current.changeWords };
  if (current.edited) return { step: 'sendChanged', turn: 'maker', number };
  return { step: 'waiting', turn: 'customer', number, opened: current.opened };
}

export type SendRefusal = 'noGarment' | 'noPrint' | 'noCounts';

/** Why a layout cannot be sent yet, or null when it can. */
export function sendRefusal(layout: Pick<LayoutDocument, 'garments' | 'prints'>): SendRefusal | null {
  if (layout.garments.length === 0) return 'noGarment';
  if (layout.prints.length === 0) return 'noPrint';
  return totalCount(layout.garments) === 0 ? 'noCounts' : null;
}
