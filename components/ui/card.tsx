import type { ReactNode } from 'react';
import styles from './card.module.css';
import { classNames } from './class-names';

type CardProps = {
  children: ReactNode;
  as?: 'div' | 'section' | 'article' | 'li';
  /** rule: one of many. ink: the one in hand. stop: the one that cannot wait. */
  edge?: 'rule' | 'ink' | 'stop';
  id?: string;
  'aria-labelledby'?: string;
};

/** A slip of white paper. */
export function Card({ children, as: Element = 'div', edge = 'rule', ...rest }: CardProps) {
  return (
    <Element {...rest} className={classNames(styles.card, styles[edge])}>
      {children}
    </Element>
  );
}
