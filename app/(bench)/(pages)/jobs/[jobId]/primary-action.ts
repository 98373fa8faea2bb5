import type { NextStep } from '@/lib/domain/revision/next-step';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';

/** Where the job's next step is taken, and what the button there is called. */
export function primaryAction(
  locale: Locale,
  jobId: string,
  step: NextStep,
  hasArt: boolean,
): { href: string; words: string } {
  const t = translatorFor(locale, 'jobs.page.primary');
  const job = `/jobs/${jobId}`;
  switch (step.step) {
    case 'addGarment':
      return { href: '#add-garment', words: t('addGarment') };
    case 'addArt':
      return hasArt ? { href: `${job}/table`, words: t('place') } : { href: '#art', words: t('addArt') };
    case 'addCounts':
      return { href: '#garments', words: t('addCounts') };
    case 'addPeople':
      return { href: `${job}/people`, words: t('addPeople') };
    case 'checkList':
      return { href: `${job}/people`, words: t('checkList') };
    case 'sendFirst':
      return { href: `${job}/send`, words: t('send', { next: 1 }) };
    case 'sendChanged':
      return { href: `${job}/send`, words: t('send', { next: step.number + 1 }) };
    case 'changeAsked':
    case 'reopened':
      return { href: `${job}/table`, words: t('change') };
    case 'waiting':
      return { href: `${job}/revisions/${step.number}`, words: t('waiting', { number: step.number }) };
    case 'press':
      return { href: `${job}/revisions/${step.number}/specification`, words: t('press') };
  }
}
