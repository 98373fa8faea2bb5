import Link from 'next/link';
import type { ReactNode } from 'react';
import { Card } from '../ui/card';
import styles from './blank-card.module.css';

type BlankCardProps = {
  href: string;
  name: string;
  /** `Crew tee, youth · Cotton` */
  what: string;
  /** `XS to XL, 5 sizes` */
  sizes: string;
  onHand: string;
  /** Said where its chart is a starter one. */
  generic: string | null;
  outline: ReactNode;
  colours: ReactNode;
};

/** A blank on the list. The whole slip leads to it. */
export function BlankCard({ href, name, what, sizes, onHand, generic, outline, colours }: BlankCardProps) {
  return (
    <Card as="li">
      <div className={styles.row}>
        <div className={styles.outline}>{outline}</div>
        <div className={styles.words}>
          <h2 className={styles.name}>
            <Link href={href} prefetch={false} className={styles.link}>
              {name}
            </Link>
          </h2>
          <p className={styles.what}>{what}</p>
          {colours}
        </div>
        <div className={styles.counts}>
          <p>{sizes}</p>
          <p className={styles.onHand}>{onHand}</p>
          {generic === null ? null : (
            <p className={styles.generic}>
              <span aria-hidden="true">△ </span>
              {generic}
            </p>
          )}
        </div>
      </div>
    </Card>
  );
}
