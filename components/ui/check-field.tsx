import type { ComponentProps } from 'react';
import { classNames } from './class-names';
import styles from './field.module.css';
import { FieldNotes, type FieldWords, fieldDescription } from './field-frame';

type CheckFieldProps = FieldWords & {
  name: string;
  type?: 'checkbox' | 'radio';
} & Omit<ComponentProps<'input'>, 'className' | 'style' | 'name' | 'type'>;

/** A box to tick (or one of several to choose), large enough for a thumb; pressing the words ticks it too. */
export function CheckField({
  label,
  hint,
  error,
  name,
  type = 'checkbox',
  id = type === 'radio' ? undefined : name,
  ...rest
}: CheckFieldProps) {
  const own = id ?? `${name}-${String(rest.value ?? '')}`;
  return (
    <div className={styles.check}>
      <input
        key={String(rest.defaultChecked ?? '')}
        {...rest}
        {...fieldDescription(own, { hint, error })}
        id={own}
        name={name}
        type={type}
        className={classNames(styles.box, type === 'radio' && styles.round)}
      />
      <div className={styles.checkWords}>
        <label htmlFor={own} className={styles.checkLabel}>
          {label}
        </label>
        <FieldNotes id={own} hint={hint} error={error} />
      </div>
    </div>
  );
}
