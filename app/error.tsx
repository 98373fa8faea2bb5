'use client';

import { Button } from '@/components/ui/button';
import { PageHeading } from '@/components/ui/page-heading';
import { brokenWords } from '@/lib/messages/broken-words';
import styles from './aside.module.css';

type BrokenPageProps = { error: Error & { digest?: string }; reset: () => void };

export default function BrokenPage({ error, reset }: BrokenPageProps) {
  return (
    <main className={styles.aside}>
      <PageHeading lead={brokenWords.text}>{brokenWords.title}</PageHeading>
      <Button kind="primary" onClick={reset}>
        {brokenWords.again}
      </Button>
      {error.digest ? (
        <p>
          {brokenWords.reference} {error.digest}
        </p>
      ) : null}
    </main>
  );
}
