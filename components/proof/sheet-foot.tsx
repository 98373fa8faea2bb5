import { ReachShop } from './reach-shop';
import type { ReachWords } from './reach-words';
import styles from './sheet-foot.module.css';

/** How to reach the shop, and small, at the very end, which revision this is. */
export function SheetFoot({ reach, seal }: { reach: ReachWords; seal: string }) {
  return (
    <footer className={styles.foot}>
      <h2>{reach.title}</h2>
      <ReachShop reach={reach} />
      <p className={styles.seal}>{seal}</p>
    </footer>
  );
}
