import { shortSeal } from '@/lib/domain/revision/canonical';
import type { AnswerRoute } from '@/lib/domain/revision/state';
import { zonedMomentWords } from '@/lib/messages/moments';
import { translatorFor } from '@/lib/messages/translator';
import styles from './answer-given.module.css';
import type { SheetContext } from './sheet-context';

/** The last word of the person whose page it is. */
export type GivenAnswer = {
  readonly word: 'yes' | 'change';
  readonly at: Date;
  readonly typedName: string | null;
  readonly words: string | null;
  readonly how: AnswerRoute;
};

type AnswerGivenProps = {
  context: SheetContext;
  given: GivenAnswer;
  statement: string;
  mayAnswer: boolean;
  signedOff: boolean;
};

/** What was answered, to exactly what, when and by whom, and what happens next. */
export function AnswerGiven({ context, given, statement, mayAnswer, signedOff }: AnswerGivenProps) {
  const { locale, zone, shop, seal } = context;
  const t = translatorFor(locale, 'proof');
  const number = String(context.number);
  const { how, word } = given;
  const title =
    how === 'link'
      ? t(word === 'yes' ? 'given.yes' : 'given.change', { number })
      : t(word === 'yes' ? 'given.yesNoted' : 'given.changeNoted', { number, shop: shop.name, how });
  const next =
    word === 'change'
      ? [t('given.changeNext', { shop: shop.name }), ...(mayAnswer ? [t('given.changeYes')] : [])]
      : [
          signedOff ? t('given.yesNext', { shop: shop.name }) : t('given.yesWaiting', { shop: shop.name }),
          t(how === 'link' ? 'given.yesWrong' : 'given.notRight', { shop: shop.name }),
        ];
  return (
    <div className={word === 'yes' ? styles.yes : styles.change}>
      <h3>{title}</h3>
      {given.words ? (
        <figure className={styles.words}>
          <figcaption>{t('given.yourWords')}</figcaption>
          <blockquote>{given.words}</blockquote>
        </figure>
      ) : null}
      <dl className={styles.facts}>
        <dt>{t('given.when')}</dt>
        <dd>{zonedMomentWords(locale, zone, given.at)}</dd>
        {given.typedName ? (
          <>
            <dt>{t(how === 'link' && word === 'yes' ? 'given.signed' : 'given.saidBy')}</dt>
            <dd>{given.typedName}</dd>
          </>
        ) : null}
        <dt>{t('given.what')}</dt>
        <dd>{t('given.whatText', { number, seal: shortSeal(seal) })}</dd>
        {word === 'yes' && how === 'link' ? (
          <>
            <dt>{t('given.agreed')}</dt>
            <dd className={styles.words}>{statement}</dd>
          </>
        ) : null}
      </dl>
      <h4>{t('given.next')}</h4>
      {next.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  );
}
