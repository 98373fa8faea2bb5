import type { ReactNode } from 'react';
import styles from './field.module.css';
import { FieldNotes, type FieldWords, fieldDescription } from './field-frame';

type FieldGroupProps = FieldWords & { id: string; children: ReactNode };

/** Several fields that answer one question, under its words. */
export function FieldGroup({ id, label, hint, error, children }: FieldGroupProps) {
  const { 'aria-describedby': describedBy } = fieldDescription(id, { hint, error });
  return (
    <fieldset id={id} aria-describedby={describedBy} className={styles.group}>
      <legend className={styles.legend}>{label}</legend>
      <FieldNotes id={id} hint={hint} error={error} />
      {children}
    </fieldset>
  );
}
