import type { ReactNode } from 'react';
import { Card } from '../ui/card';
import styles from './font-card.module.css';
import { TypeSample, type TypeSampleProps } from './type-sample';

type FontCardProps = {
  family: string;
  style: string;
  sample: TypeSampleProps;
  /** What there is to know of it. */
  children?: ReactNode;
  /** What can be done with it. */
  action?: ReactNode;
};

/** One font with a few letters set in it. */
export function FontCard({ family, style, sample, children, action }: FontCardProps) {
  return (
    <Card as="li">
      <div className={styles.row}>
        <div className={styles.words}>
          <h3 className={styles.name}>
            {family} <span className={styles.style}>{style}</span>
          </h3>
          {children}
        </div>
        <TypeSample {...sample} />
        {action ? <div className={styles.action}>{action}</div> : null}
      </div>
    </Card>
  );
}
