import { useTranslations } from 'use-intl';
import { Button } from '../ui/button';
import styles from './layout-table.module.css';

/** While the fonts of the lettering on a table are on their way, or where one could not be had. */
export function OpeningFonts({ failed, retry }: { failed: boolean; retry: () => void }) {
  const t = useTranslations('lettering');
  if (!failed) {
    return (
      <p role="status" className={styles.opening}>
        {t('opening')}
      </p>
    );
  }
  return (
    <main className={styles.empty}>
      <p role="alert">{t('failed')}</p>
      <Button kind="primary" onClick={retry}>
        {t('retry')}
      </Button>
    </main>
  );
}
