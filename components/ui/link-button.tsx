import Link from 'next/link';
import type { ComponentProps } from 'react';
import { type ButtonLook, buttonClass } from './button';

type LinkButtonProps = ButtonLook & Omit<ComponentProps<typeof Link>, 'className' | 'style'>;

/**
 * A link that looks like a button: it goes somewhere and changes nothing. Pages differ by request, so none is fetched
 * before it is asked for.
 */
export function LinkButton({ kind, wide, prefetch = false, ...rest }: LinkButtonProps) {
  return <Link {...rest} prefetch={prefetch} className={buttonClass({ kind, wide })} />;
}
