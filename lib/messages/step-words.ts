import type { NextStep } from '../domain/revision/next-step';
import type { Translator } from './translator';

/** The `bench` subject: `translatorFor(locale, 'bench')` on the server, `useTranslations('bench')` in the browser. */
export type BenchTranslator = Translator<'bench'>;

/** The longest part of a customer's words that a sentence quotes, in characters. */
const LONGEST_QUOTE = 90;

/** What happens next with a job, in one sentence. */
export function stepWords(t: BenchTranslator, step: NextStep): string {
  switch (step.step) {
    case 'addGarment':
    case 'addPeople':
    case 'addCounts':
    case 'addArt':
    case 'sendFirst':
      return t(`step.${step.step}`);
    case 'checkList':
      return step.findings > 0
        ? t('step.checkList', { count: step.findings })
        : t('step.confirmList', { count: step.unconfirmed });
    case 'changeAsked': {
      const words = quoted(step.words);
      const numbers = { number: step.number, next: step.number + 1 };
      return words === '' ? t('step.changeAskedSilently', numbers) : t('step.changeAsked', { ...numbers, words });
    }
    case 'waiting':
      return t(step.opened ? 'step.waitingOpened' : 'step.waitingUnopened', { number: step.number });
    case 'sendChanged':
    case 'press':
    case 'reopened':
      return t(`step.${step.step}`, { number: step.number, next: step.number + 1 });
  }
}

function quoted(words: string): string {
  const oneLine = words.replace(/\s+/g, ' ').trim();
  const characters = [...oneLine];
  return characters.length <= LONGEST_QUOTE
    ? oneLine
    : `${characters
        .slice(0, LONGEST_QUOTE - 1)
        .join('')
        .trimEnd()}…`;
}
