import Link from 'next/link';
import { Button } from '../ui/button';
import { LinkButton } from '../ui/link-button';
import styles from './bench-header.module.css';

type BenchHeaderProps = {
  shopName: string;
  words: {
    skip: string;
    navigation: string;
    jobs: string;
    blanks: string;
    fonts: string;
    newJob: string;
    signOut: string;
  };
  signOut: () => Promise<void>;
};

/** What stands at the top of every page of the bench. */
export function BenchHeader({ shopName, words, signOut }: BenchHeaderProps) {
  return (
    <header className={styles.header}>
      <a href="#page" className={`visually-hidden ${styles.skip}`}>
        {words.skip}
      </a>
      <div className={styles.row}>
        <Link href="/jobs" prefetch={false} className={styles.shop}>
          {shopName}
        </Link>
        <nav aria-label={words.navigation} className={styles.places}>
          <Link href="/jobs" prefetch={false}>
            {words.jobs}
          </Link>
          <Link href="/blanks" prefetch={false}>
            {words.blanks}
          </Link>
          <Link href="/fonts" prefetch={false}>
            {words.fonts}
          </Link>
        </nav>
        <form action={signOut} className={styles.signOut}>
          <Button kind="quiet" type="submit">
            {words.signOut}
          </Button>
        </form>
        <div className={styles.newJob}>
          <LinkButton kind="primary" href="/jobs/new">
            {words.newJob}
          </LinkButton>
        </div>
      </div>
    </header>
  );
}
