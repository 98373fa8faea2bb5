import type { ComponentProps } from 'react';
import { classNames } from './class-names';
import styles from './field.module.css';
import { FieldFrame, type FieldWords, fieldDescription } from './field-frame';

type TextAreaProps = FieldWords & { name: string } & Omit<ComponentProps<'textarea'>, 'className' | 'style' | 'name'>;

/** Several lines of text. After a refusal pass what was typed as `defaultValue`. */
export function TextArea({ label, hint, error, name, id = name, rows = 4, ...rest }: TextAreaProps) {
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      <textarea
        {...rest}
        {...fieldDescription(id, { hint, error })}
        id={id}
        name={name}
        rows={rows}
        className={classNames(styles.control, styles.area)}
      />
    </FieldFrame>
  );
}
