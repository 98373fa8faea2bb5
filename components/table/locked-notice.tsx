import { useTranslations } from 'use-intl';
import { Button } from '../ui/button';
import { LinkButton } from '../ui/link-button';
import styles from './layout-table.module.css';

/** Says that the layout is signed off, and how to go on. `meanwhile`: it was signed off while it was being worked at. */
export function LockedNotice({ jobId, meanwhile }: { jobId: string; meanwhile?: boolean }) {
  const t = useTranslations('table.locked');
  return (
    <div className={styles.locked} role={meanwhile ? 'alert' : undefined}>
      <p>{t(meanwhile ? 'meanwhile' : 'before')}</p>
      {meanwhile ? (
        <Button onClick={() => window.location.reload()}>{t('reload')}</Button>
      ) : (
        <LinkButton href={`/jobs/${jobId}`}>{t('toJob')}</LinkButton>
      )}
    </div>
  );
}
