import type { Metadata } from 'next';
import { PageHeading } from '@/components/ui/page-heading';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import styles from '../../aside.module.css';

export function generateMetadata(): Metadata {
  return { title: { absolute: translatorFor(defaultLocale, 'proof')('wrong.title') } };
}

/** The same for a link that is wrong, out of date or taken back, and for one that nothing was sent to yet. */
export default function WrongLink() {
  const t = translatorFor(defaultLocale, 'proof');
  return (
    <main className={styles.aside}>
      <PageHeading lead={t('wrong.text')}>{t('wrong.title')}</PageHeading>
      <p>{t('wrong.whatToDo')}</p>
    </main>
  );
}
