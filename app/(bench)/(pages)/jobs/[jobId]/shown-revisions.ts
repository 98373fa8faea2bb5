import type { ShownAnswer, ShownRevision } from '@/components/jobs/revision-list';
import type { Locale } from '@/lib/messages/locales';
import { nearMomentWords } from '@/lib/messages/moments';
import { translatorFor } from '@/lib/messages/translator';
import type { AnswerRow, RevisionRow } from '@/lib/server/jobs/load-jobs';

/** The job's revisions in words. `zone` is the job's. */
export function shownRevisions(
  locale: Locale,
  zone: string,
  jobId: string,
  revisions: readonly RevisionRow[],
): ShownRevision[] {
  const t = translatorFor(locale, 'jobs.revisions');
  return revisions.map((revision) => {
    const { revisionId, number, state, standing, opened } = revision;
    const isCurrent = state === 'current';
    const href = `/jobs/${jobId}/revisions/${number}`;
    const isSignedOff = isCurrent && standing === 'signedOff';
    return {
      revisionId,
      href,
      name: t('rev', { number }),
      sent: t('sent', { moment: nearMomentWords(locale, zone, revision.sentAt) }),
      standing: isCurrent ? t(`standing.${standing}`) : t(`state.${state}`),
      tone: isCurrent ? (isSignedOff ? 'yes' : standing === 'changeAsked' ? 'change' : 'open') : 'past',
      opened: t(opened ? 'opened' : 'unopened'),
      answers: shownAnswers(locale, zone, revision.answers),
      specification: isSignedOff ? { href: `${href}/specification`, words: t('specification') } : null,
    };
  });
}

/** Answers in words; those the maker recorded are marked as weaker. */
export function shownAnswers(locale: Locale, zone: string, answers: readonly AnswerRow[]): ShownAnswer[] {
  const t = translatorFor(locale, 'jobs.revisions');
  return answers.map(({ contactName, word, how, at, typedName, words }) => ({
    key: `${at.toISOString()} ${word}`,
    word,
    said: t(word, { name: typedName || contactName || t('erased') }),
    how: t(`how.${how}`, { moment: nearMomentWords(locale, zone, at) }),
    weaker: how === 'link' ? null : t('weaker'),
    quote: words ? t('quote', { words }) : null,
  }));
}
