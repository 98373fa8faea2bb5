import { LinkButton } from '@/components/ui/link-button';
import { PageHeading } from '@/components/ui/page-heading';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import styles from './aside.module.css';

export default function NotFound() {
  const t = translatorFor(defaultLocale, 'site');
  return (
    <main className={styles.aside}>
      <PageHeading above={t('name')} lead={t('notFoundText')}>
        {t('notFoundTitle')}
      </PageHeading>
      <LinkButton href="/" prefetch={false}>
        {t('toFirstPage')}
      </LinkButton>
    </main>
  );
}
