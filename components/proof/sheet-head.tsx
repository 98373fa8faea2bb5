import type { ReactNode } from 'react';
import { FormNotice } from '@/components/ui/form-notice';
import { zonedMomentWords } from '@/lib/messages/moments';
import { translatorFor } from '@/lib/messages/translator';
import type { GivenAnswer } from './answer-given';
import type { SheetContext } from './sheet-context';
import styles from './sheet-head.module.css';

type SheetHeadProps = {
  context: SheetContext;
  contactName: string | null;
  neededAt: Date;
  given: GivenAnswer | null;
  mayAnswer: boolean;
  signedOff: boolean;
};

/** Whose order it is, which look, and the one thing to do: answer, with a way straight to it. */
export function SheetHead({ context, contactName, ...rest }: SheetHeadProps) {
  const t = translatorFor(context.locale, 'proof');
  const { shop, jobTitle, number } = context;
  return (
    <header className={styles.head}>
      <p className={styles.shop}>{shop.name}</p>
      <h1>{t('title', { job: jobTitle, look: t('look', { number: String(number) }) })}</h1>
      <details className={styles.whose}>
        <summary>
          {contactName ? t('for', { name: contactName }) : t('forNobody')} <span>{t('notYou')}</span>
        </summary>
        <p>{t('notYouText', { name: contactName ?? 'none', shop: shop.name })}</p>
      </details>
      <WhatToDo context={context} {...rest} />
    </header>
  );
}

function WhatToDo({
  context: { locale, zone, shop, state, number, currentNumber, path },
  neededAt,
  given,
  mayAnswer,
  signedOff,
}: Omit<SheetHeadProps, 'contactName'>): ReactNode {
  const t = translatorFor(locale, 'proof');
  if (state === 'replaced') {
    const current = String(currentNumber);
    return (
      <FormNotice kind="look" title={t('top.replaced', { number: String(number), current })}>
        <p>{t('top.replacedText')}</p>
        <a href={path} className={styles.straight}>
          {t('top.toCurrent', { current })}
        </a>
      </FormNotice>
    );
  }
  if (given) {
    const title = given.word === 'yes' ? t('top.yes') : t('top.change', { shop: shop.name });
    return (
      <FormNotice kind={given.word === 'yes' ? 'done' : 'note'} title={title}>
        <a href="#answer" className={styles.straight}>
          {t('top.seeAnswer')}
        </a>
      </FormNotice>
    );
  }
  if (!mayAnswer) {
    return (
      <FormNotice kind="note" title={signedOff ? t('top.signedOff') : t('top.onlyLook')}>
        <p>{signedOff ? t('top.signedOffText', { shop: shop.name }) : t('top.onlyLookText')}</p>
      </FormNotice>
    );
  }
  return (
    <div className={styles.ask}>
      <p>{t('ask.look')}</p>
      <p>
        {t('ask.needed')} <strong>{zonedMomentWords(locale, zone, neededAt)}</strong>.
      </p>
      <a href="#answer" className={styles.straight}>
        {t('ask.toAnswer')}
      </a>
    </div>
  );
}
