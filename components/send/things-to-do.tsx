import Link from 'next/link';
import styles from './things-to-do.module.css';

/** Something missing, in one sentence, with where to put it right. */
export type ThingToDo = { text: string; href: string; link: string };

/** What is missing, one line each. */
export function ThingsToDo({ things }: { things: readonly ThingToDo[] }) {
  return (
    <ul className={styles.things}>
      {things.map(({ text, href, link }) => (
        <li key={text}>
          {text}{' '}
          <Link href={href} prefetch={false}>
            {link}
          </Link>
        </li>
      ))}
    </ul>
  );
}
