import type { ReactNode } from 'react';
import styles from './page-heading.module.css';

type PageHeadingProps = {
  /** Whose page it is, small, above the title. */
  above?: ReactNode;
  children: ReactNode;
  /** One sentence under the title. */
  lead?: ReactNode;
  /** What can be done from here. */
  actions?: ReactNode;
};

/** A page's only first-level heading, with what belongs right beside it. */
export function PageHeading({ above, children, lead, actions }: PageHeadingProps) {
  return (
    <header className={styles.heading}>
      <div className={styles.words}>
        {above ? <p className={styles.above}>{above}</p> : null}
        <h1>{children}</h1>
        {lead ? <p className={styles.lead}>{lead}</p> : null}
      </div>
      {actions ? <div className={styles.actions}>{actions}</div> : null}
    </header>
  );
}
