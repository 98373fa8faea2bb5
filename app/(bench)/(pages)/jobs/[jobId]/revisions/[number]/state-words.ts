import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import type { RevisionView } from '@/lib/server/revisions/load-revision';

/** Where a revision stands, in one sentence. */
export function stateWords(locale: Locale, { revision, standing, reopened, opened }: RevisionView): string {
  const t = translatorFor(locale, 'revision.state');
  const { state, number, currentNumber } = revision;
  if (state === 'replaced') return t('replaced', { current: currentNumber ?? number });
  if (state === 'withdrawn') return t('withdrawn');
  if (standing === 'signedOff') return t(reopened ? 'reopened' : 'signedOff');
  if (standing === 'changeAsked') return t('changeAsked', { next: number + 1 });
  return standing === 'partlyYes' ? t('partlyYes') : t('unanswered', { opened: String(opened) });
}

/** Whether the revision may be pressed from, and if not, why. */
export function pressStop({
  revision,
  standing,
  reopened,
}: RevisionView): 'replaced' | 'withdrawn' | 'reopened' | 'unanswered' | 'partlyYes' | 'changeAsked' | null {
  if (revision.state !== 'current') return revision.state;
  if (standing !== 'signedOff') return standing;
  return reopened ? 'reopened' : null;
}
