'use client';

import { type ComponentProps, useState } from 'react';
import { Button } from './button';
import { classNames } from './class-names';
import styles from './field.module.css';
import { FieldFrame, type FieldWords, fieldDescription } from './field-frame';

type PasswordFieldProps = FieldWords & {
  name: string;
  /** Words of the button that shows and hides what is typed. */
  show: string;
  hide: string;
} & Omit<ComponentProps<'input'>, 'className' | 'style' | 'name' | 'type' | 'defaultValue'>;

/** A password: typed hidden, shown on demand, never sent back to the page. */
export function PasswordField({ label, hint, error, name, id = name, show, hide, ...rest }: PasswordFieldProps) {
  const [shown, setShown] = useState(false);
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      <div className={styles.withButton}>
        <input
          {...rest}
          {...fieldDescription(id, { hint, error })}
          id={id}
          name={name}
          type={shown ? 'text' : 'password'}
          autoCapitalize="none"
          autoCorrect="off"
          spellCheck={false}
          className={classNames(styles.control, styles.characters)}
        />
        <Button aria-controls={id} onClick={() => setShown(!shown)}>
          {shown ? hide : show}
        </Button>
      </div>
    </FieldFrame>
  );
}
