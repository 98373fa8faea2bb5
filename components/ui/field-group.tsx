import type { ReactNode } from 'react';
import { classNames } from './class-names';
import styles from './field.module.css';
import { FieldNotes, type FieldWords, fieldDescription } from './field-frame';

type FieldGroupProps = FieldWords & {
  id: string;
  children: ReactNode;
  /** One question among other fields: its words are as large as their labels. */
  inline?: boolean;
};

/** Several fields that answer one question, under its words. */
export function FieldGroup({ id, label, hint, error, inline = false, children }: FieldGroupProps) {
  const { 'aria-describedby': describedBy } = fieldDescription(id, { hint, error });
  return (
    <fieldset id={id} aria-describedby={describedBy} className={styles.group}>
      <legend className={classNames(styles.legend, inline && styles.inlineLegend)}>{label}</legend>
      <FieldNotes id={id} hint={hint} error={error} />
      {children}
    </fieldset>
  );
}
