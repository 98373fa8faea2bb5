import type { Metadata } from 'next';
import styles from '@/app/aside.module.css';
import { PageHeading } from '@/components/ui/page-heading';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';

export function generateMetadata(): Metadata {
  return { title: { absolute: translatorFor(defaultLocale, 'customer-art')('wrong.title') } };
}

/** The same for an art link that is wrong, out of date or taken back. */
export default function WrongArtLink() {
  const t = translatorFor(defaultLocale, 'customer-art');
  return (
    <main className={styles.aside}>
      <PageHeading lead={t('wrong.text')}>{t('wrong.title')}</PageHeading>
      <p>{t('wrong.whatToDo')}</p>
    </main>
  );
}
