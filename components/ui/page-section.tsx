import type { ReactNode } from 'react';
import styles from './page-section.module.css';

type PageSectionProps = {
  /** Also where a link to the section leads. */
  id: string;
  title: ReactNode;
  children: ReactNode;
  /** What can be done with all of it, beside its title. */
  actions?: ReactNode;
};

/** A part of a page under a second-level heading. */
export function PageSection({ id, title, children, actions }: PageSectionProps) {
  return (
    <section id={id} aria-labelledby={`${id}-title`} className={styles.section}>
      <div className={styles.head}>
        <h2 id={`${id}-title`}>{title}</h2>
        {actions}
      </div>
      {children}
    </section>
  );
}
