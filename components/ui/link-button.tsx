import Link from 'next/link';
import type { ComponentProps } from 'react';
import { type ButtonLook, buttonClass } from './button';

type LinkButtonProps = ButtonLook & Omit<ComponentProps<typeof Link>, 'className' | 'style'>;

/** A link that looks like a button: it goes somewhere and changes nothing. */
export function LinkButton({ kind, wide, ...rest }: LinkButtonProps) {
  return <Link {...rest} className={buttonClass({ kind, wide })} />;
}
