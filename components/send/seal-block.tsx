import { buttonClass } from '../ui/button';
import styles from './seal-block.module.css';

type SealBlockProps = {
  words: { text: string; short: string; full: string; download: string };
  shortSeal: string;
  seal: string;
  /** Where the sealed bytes are. */
  href: string;
};

/** A revision's seal, character by character, and the bytes it is the fingerprint of. */
export function SealBlock({ words, shortSeal, seal, href }: SealBlockProps) {
  return (
    <div className={styles.block}>
      <p className={styles.text}>{words.text}</p>
      <dl className={styles.seals}>
        <div>
          <dt>{words.short}</dt>
          <dd className={styles.characters}>{shortSeal}</dd>
        </div>
        <div>
          <dt>{words.full}</dt>
          <dd className={styles.characters}>{seal}</dd>
        </div>
      </dl>
      <a href={href} download className={buttonClass({})}>
        {words.download}
      </a>
    </div>
  );
}
