import { shortSeal } from '@/lib/domain/revision/canonical';
import { translatorFor } from '@/lib/messages/translator';
import { ReachShop } from './reach-shop';
import type { SheetContext } from './sheet-context';
import styles from './sheet-foot.module.css';

/** How to reach the shop, and small, at the very end, which revision this is. */
export function SheetFoot({ context }: { context: SheetContext }) {
  const t = translatorFor(context.locale, 'proof');
  return (
    <footer className={styles.foot}>
      <h2>{t('reach.title', { shop: context.shop.name })}</h2>
      <ReachShop context={context} />
      <p className={styles.seal}>{t('foot', { number: String(context.number), seal: shortSeal(context.seal) })}</p>
    </footer>
  );
}
