'use client';

import { useId, useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import { Button } from '../ui/button';
import styles from './copy-link.module.css';

/** A customer's link, to be copied at once or selected by hand. */
export function CopyLink({ label, url }: { label: string; url: string }) {
  const t = useTranslations('revision');
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [came, setCame] = useState<'copied' | 'copyFailed' | null>(null);

  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(url);
      setCame('copied');
    } catch {
      // Plain http addresses other than this computer have no clipboard: the link is left selected instead.
      field.current?.focus();
      field.current?.select();
      setCame('copyFailed');
    }
  }

  return (
    <div className={styles.link}>
      <label htmlFor={id} className={styles.label}>
        {label}
      </label>
      <div className={styles.strip}>
        <input
          ref={field}
          id={id}
          type="text"
          readOnly
          value={url}
          onFocus={(event) => event.target.select()}
          className={styles.field}
        />
        <Button onClick={() => void copy()}>{t('copy')}</Button>
      </div>
      <p role="status" className={styles.came}>
        {came === 'copied' ? <span className={styles.copied}>✓ {t('copied')}</span> : null}
        {came === 'copyFailed' ? t('copyFailed') : null}
      </p>
    </div>
  );
}
