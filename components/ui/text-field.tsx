import type { ComponentProps } from 'react';
import { classNames } from './class-names';
import styles from './field.module.css';
import { FieldFrame, type FieldWords, fieldDescription } from './field-frame';

export type FieldWidth = 'short' | 'middle' | 'full';

type TextFieldProps = FieldWords & {
  name: string;
  /** About as wide as what is typed into it. */
  width?: FieldWidth;
  /** For characters that are checked one by one: codes, seals, read-backs. */
  characters?: boolean;
} & Omit<ComponentProps<'input'>, 'className' | 'style' | 'name' | 'width'>;

/** One line of text. Its id is its name unless said. After a refusal pass what was typed as `defaultValue`. */
export function TextField({ label, hint, error, name, id = name, width, characters, ...rest }: TextFieldProps) {
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      <input
        type="text"
        {...rest}
        {...fieldDescription(id, { hint, error })}
        id={id}
        name={name}
        className={classNames(styles.control, width && styles[width], characters && styles.characters)}
      />
    </FieldFrame>
  );
}
