/** What a revision is, derived from what happened; never stored. */
export type RevisionState = 'current' | 'replaced' | 'withdrawn';

/** A revision as far as its state goes. */
export type RevisionFacts = { readonly number: number; readonly withdrawn: boolean };

/** The newest revision that was not withdrawn, or null. */
export function currentNumber(revisions: readonly RevisionFacts[]): number | null {
  return revisions.reduce<number | null>(
    (newest, { number, withdrawn }) => (withdrawn ? newest : Math.max(newest ?? 0, number)),
    null,
  );
}

/** The state of one revision among all of its job. */
export function revisionState(number: number, revisions: readonly RevisionFacts[]): RevisionState {
  const revision = revisions.find((each) => each.number === number);
  if (!revision) throw new Error(`revisionState: no revision ${number}`);
  if (revision.withdrawn) return 'withdrawn';
  return number === currentNumber(revisions) ? 'current' : 'replaced';
}

/** One signer's word on a revision, oldest first when several are listed: the last one counts. */
export type AnswerFacts = { readonly contactId: string; readonly word: 'yes' | 'change'; readonly how: AnswerRoute };
/** How an answer reached the shop; everything but `link` is the maker's own record of it and is shown as weaker. */
export const ANSWER_ROUTES = ['link', 'text', 'phone', 'counter'] as const;
export type AnswerRoute = (typeof ANSWER_ROUTES)[number];

export type Standing = 'unanswered' | 'changeAsked' | 'partlyYes' | 'signedOff';

/**
 * Where a revision stands: signed off when every signer who must sign says yes and nobody says change; a change
 * outweighs any yes. With no signer who must sign it can never be signed off.
 */
export function standing(mustSign: readonly string[], answers: readonly AnswerFacts[]): Standing {
  const last = new Map(answers.map(({ contactId, word }) => [contactId, word]));
  if ([...last.values()].includes('change')) return 'changeAsked';
  const yeses = mustSign.filter((contactId) => last.get(contactId) === 'yes').length;
  if (mustSign.length > 0 && yeses === mustSign.length) return 'signedOff';
  return yeses > 0 ? 'partlyYes' : 'unanswered';
}

/**
 * The lock: once the current revision is signed off, its layout cannot be changed until the maker opens the job again
 * with a reason (`reopenedFor` is the number of the revision that was opened again).
 */
export function layoutIsLocked(
  current: { number: number; standing: Standing } | null,
  reopenedFor: number | null,
): boolean {
  return current !== null && current.standing === 'signedOff' && reopenedFor !== current.number;
}
