import type { ReactNode } from 'react';
import styles from './specification-sheet.module.css';

type SpecificationSheetProps = {
  shopName: string;
  title: string;
  /** `Autumn relay shirts, Rev 2` */
  of: string;
  /** Why nothing may be pressed from this page; null when it may. */
  stop: { text: string; link: ReactNode } | null;
  facts: readonly { name: string; value: ReactNode; characters?: boolean }[];
  actions: ReactNode;
  children: ReactNode;
};

/** The page a press is set by, on screen and on paper: whose it is, whether it holds, then the garments. */
export function SpecificationSheet({
  shopName,
  title,
  of,
  stop,
  facts,
  actions,

  children,
}: SpecificationSheetProps) {
  return (
    <div className={styles.sheet}>
      <header className={styles.head}>
        <div>
          <p className={styles.shop}>
            {shopName} · {title}
          </p>
          <h1>{of}</h1>
        </div>
        <div className={styles.actions}>{actions}</div>
      </header>
      {stop ? (
        <p role="alert" className={styles.stop}>
          {stop.text} <span className={styles.stopLink}>{stop.link}</span>
        </p>
      ) : null}
      <dl className={styles.facts}>
        {facts.map(({ name, value, characters }) => (
          <div key={name} className={characters ? styles.wide : undefined}>
            <dt className={styles.name}>{name}</dt>
            <dd className={characters ? styles.characters : undefined}>{value}</dd>
          </div>
        ))}
      </dl>
      {children}
    </div>
  );
}

type SheetPartProps = {
  id: string;
  title: string;
  /** Which revision the part is of: `Rev 2, seal EEF0-884C`. */
  mark?: string;
  children: ReactNode;
};

/** A part of the sheet that is kept together on paper where it fits. */
export function SheetPart({ id, title, mark, children }: SheetPartProps) {
  return (
    <section aria-labelledby={id} className={styles.part}>
      <div className={styles.partHead}>
        <h2 id={id}>{title}</h2>
        {mark ? <p className={styles.mark}>{mark}</p> : null}
      </div>
      {children}
    </section>
  );
}
