import styles from './proof-sheet.module.css';
import { ReachShop } from './reach-shop';
import type { RefusedForm } from './refused-form';
import { RefusedNotice } from './refused-notice';
import type { SheetContext } from './sheet-context';

type WithdrawnSheetProps = { context: SheetContext; refused: RefusedForm };

/** The page for an answer to a revision that was taken back meanwhile: nothing is left to look at but what was typed. */
export function WithdrawnSheet({ context, refused }: WithdrawnSheetProps) {
  return (
    <main lang={context.locale} className={styles.sheet}>
      <h1>{context.jobTitle}</h1>
      <RefusedNotice context={context} refused={refused} hasForm={false} />
      <ReachShop context={context} />
    </main>
  );
}
