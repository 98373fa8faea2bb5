import styles from './reach-shop.module.css';
import type { ReachWords } from './reach-words';

/** Ways to speak with the shop, each a press away on a phone. */
export function ReachShop({ reach: { ways, none } }: { reach: ReachWords }) {
  return (
    <ul className={styles.ways}>
      {ways.map(({ href, text }) => (
        <li key={href}>
          <a href={href}>{text}</a>
        </li>
      ))}
      {none ? <li>{none}</li> : null}
    </ul>
  );
}
