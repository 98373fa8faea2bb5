import type { ComponentProps } from 'react';
import styles from './button.module.css';
import { classNames } from './class-names';

/**
 * primary: the one thing to do here. secondary: something else one may do. quiet: a small aside.
 * yes: only the customer's yes. stop: what cannot be taken back.
 */
export type ButtonKind = 'primary' | 'secondary' | 'quiet' | 'yes' | 'stop';

export type ButtonLook = {
  kind?: ButtonKind;
  /** As wide as the column, for a phone. */
  wide?: boolean;
};

type ButtonProps = ButtonLook & Omit<ComponentProps<'button'>, 'className' | 'style'>;

/** The class names of a control that looks like a button. */
export function buttonClass({ kind = 'secondary', wide = false }: ButtonLook): string {
  return classNames(styles.button, styles[kind], wide && styles.wide);
}

/** A button. Its type is `button` unless said, so that none sends a form by accident. */
export function Button({ kind, wide, type = 'button', ...rest }: ButtonProps) {
  return <button {...rest} type={type} className={buttonClass({ kind, wide })} />;
}
