import type { Locale } from '@/lib/messages/locales';
import styles from './proof-sheet.module.css';
import { ReachShop } from './reach-shop';
import type { ReachWords } from './reach-words';
import { RefusedNotice } from './refused-notice';
import type { RefusedWords } from './refused-words';

type WithdrawnSheetProps = { locale: Locale; title: string; refused: RefusedWords; reach: ReachWords };

/** The page for an answer to a revision that was taken back meanwhile: nothing is left to look at but what was typed. */
export function WithdrawnSheet({ locale, title, refused, reach }: WithdrawnSheetProps) {
  return (
    <main lang={locale} className={styles.sheet}>
      <h1>{title}</h1>
      <RefusedNotice words={refused} />
      <ReachShop reach={reach} />
    </main>
  );
}
