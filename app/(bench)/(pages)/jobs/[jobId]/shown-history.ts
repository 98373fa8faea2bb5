import type { Locale } from '@/lib/messages/locales';
import { momentWords } from '@/lib/messages/moments';
import { translatorFor } from '@/lib/messages/translator';
import type { HistoryEntry } from '@/lib/server/record/history';

/** The job's record in words. `zone` is the job's. */
export function shownHistory(
  locale: Locale,
  zone: string,
  entries: readonly HistoryEntry[],
): { seq: number; when: string; what: string }[] {
  const t = translatorFor(locale, 'jobs.history.kind');
  const what = ({ seq, kind, number, word, reason }: HistoryEntry) => {
    switch (kind) {
      case 'jobMade':
      case 'jobEdited':
      case 'artLinkMade':
      case 'artLinkEnded':
      case 'artFromCustomer':
        return t(kind);
      case 'revisionSent':
        return t('revisionSent', { number: number ?? 0 });
      case 'answered':
        return t(word === 'yes' ? 'answeredYes' : 'answeredChange', { number: number ?? 0 });
      case 'reopened':
        return t('reopened', { number: number ?? 0, reason: reason ?? '' });
      default:
        return t('other', { seq });
    }
  };
  return entries.map((entry) => ({ seq: entry.seq, when: momentWords(locale, zone, entry.at), what: what(entry) }));
}
