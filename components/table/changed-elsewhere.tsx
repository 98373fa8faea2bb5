import { useEffect, useId, useRef } from 'react';
import { useTranslations } from 'use-intl';
import { Button } from '../ui/button';
import styles from './changed-elsewhere.module.css';

type ChangedElsewhereProps = { onTheirs: () => void; onMine: () => void };

/** Somebody else saved this layout first: which of the two goes on is the maker's choice, and nothing is lost meanwhile. */
export function ChangedElsewhere({ onTheirs, onMine }: ChangedElsewhereProps) {
  const t = useTranslations('table.conflict');
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const element = dialog.current;
    element?.showModal();
    return () => element?.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      className={styles.dialog}
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-text`}
      // Leaving without choosing would leave two copies and no saving.
      onCancel={(event) => event.preventDefault()}
    >
      <h2 id={`${id}-title`}>{t('title')}</h2>
      <p id={`${id}-text`}>{t('text')}</p>
      <div className={styles.choices}>
        <Button kind="primary" onClick={onTheirs}>
          {t('theirs')}
        </Button>
        <Button onClick={onMine}>{t('mine')}</Button>
      </div>
      <p className={styles.small}>{t('mineText')}</p>
    </dialog>
  );
}
