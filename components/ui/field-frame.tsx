import type { ReactNode } from 'react';
import styles from './field.module.css';

export type FieldWords = {
  label: ReactNode;
  /** What to type, said before it goes wrong. */
  hint?: ReactNode;
  /** One sentence: what is wrong and what to do. */
  error?: ReactNode;
};

/** The attributes that tie a control to its hint and its error. `id` is unique on the page. */
export function fieldDescription(id: string, { hint, error }: Pick<FieldWords, 'hint' | 'error'>) {
  const described = [hint ? `${id}-hint` : '', error ? `${id}-error` : ''].filter(Boolean).join(' ');
  return { 'aria-describedby': described || undefined, 'aria-invalid': error ? true : undefined };
}

/** A field's hint and error, in the order they are read. */
export function FieldNotes({ id, hint, error }: { id: string } & Pick<FieldWords, 'hint' | 'error'>) {
  return (
    <>
      {hint ? (
        <p id={`${id}-hint`} className={styles.hint}>
          {hint}
        </p>
      ) : null}
      {error ? (
        <p id={`${id}-error`} className={styles.error}>
          {error}
        </p>
      ) : null}
    </>
  );
}

/** Label, notes and control of one field, one under another. */
export function FieldFrame({ id, label, hint, error, children }: FieldWords & { id: string; children: ReactNode }) {
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={styles.label}>
        {label}
      </label>
      <FieldNotes id={id} hint={hint} error={error} />
      {children}
    </div>
  );
}
