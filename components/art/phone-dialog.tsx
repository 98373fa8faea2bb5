import { useEffect, useId, useRef } from 'react';
import { useFormatter, useTranslations } from 'use-intl';
import { Button } from '../ui/button';
import { FormNotice } from '../ui/form-notice';
import type { PhoneCode } from './phone-code';
import styles from './phone-slip.module.css';

type PhoneDialogProps = {
  code: PhoneCode | 'making' | 'failed';
  /** The names of the pictures that came, in the order they did. */
  came: readonly string[];
  onAgain: () => void;
  onClose: () => void;
};

/** The code to point a phone at, how long it is good, and what has come from the phone. */
export function PhoneDialog({ code, came, onAgain, onClose }: PhoneDialogProps) {
  const t = useTranslations('phone');
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const before = document.activeElement;
    dialog.current?.showModal();
    return () => {
      if (before instanceof HTMLElement) before.focus({ preventScroll: true });
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      className={styles.dialog}
      aria-labelledby={`${id}-title`}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onKeyDown={(event) => event.stopPropagation()}
    >
      <h2 id={`${id}-title`}>{t('open')}</h2>
      {code === 'failed' ? (
        <FormNotice kind="stop" title={t('failed')} />
      ) : code === 'making' ? (
        <p>{t('making')}</p>
      ) : (
        <Code code={code} />
      )}
      <ul role="status" className={styles.came}>
        {typeof code === 'string' || came.length > 0 ? null : <li className={styles.waiting}>{t('waiting')}</li>}
        {came.map((name, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two pictures can have one name, and the list only grows
          <li key={index}>
            <span aria-hidden="true">✓ </span>
            {t('came', { name })}
          </li>
        ))}
      </ul>
      <div className={styles.ends}>
        {code === 'failed' ? <Button onClick={onAgain}>{t('again')}</Button> : null}
        <Button kind={came.length > 0 ? 'primary' : 'secondary'} onClick={onClose}>
          {t('close')}
        </Button>
      </div>
    </dialog>
  );
}

function Code({ code: { url, expiresAt, qr, reach } }: { code: PhoneCode }) {
  const t = useTranslations('phone');
  const format = useFormatter();
  const time = format.dateTime(expiresAt, { hour: 'numeric', minute: '2-digit' });
  return (
    <>
      {reach === 'thisComputer' ? (
        <FormNotice kind="look" title={t('reach.thisComputer')}>
          <p>{t('reach.thisComputerText', { url: originOf(url) })}</p>
        </FormNotice>
      ) : null}
      <div className={styles.code}>
        <svg viewBox={`0 0 ${qr.size} ${qr.size}`} role="img" aria-label={t('code')}>
          <rect width={qr.size} height={qr.size} fill="#FFFFFF" />
          <path d={qr.d} fill="#000000" shapeRendering="crispEdges" />
        </svg>
        <div className={styles.how}>
          <p>{t('how')}</p>
          {reach === 'thisNetwork' ? <p>{t('reach.thisNetwork')}</p> : null}
          <p className={styles.waiting}>{t('until', { time })}</p>
          <p className={styles.waiting}>
            <a href={url} target="_blank" rel="noreferrer">
              {t('address')}
            </a>
          </p>
        </div>
      </div>
    </>
  );
}

function originOf(url: string): string {
  return new URL(url).origin;
}
