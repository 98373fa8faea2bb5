'use client';

import type { ReactNode } from 'react';
import { useFormStatus } from 'react-dom';
import { Button, type ButtonLook } from './button';

type SubmitButtonProps = ButtonLook & {
  children: ReactNode;
  /** Said while the form is under way, in place of its words. */
  waiting: ReactNode;
};

/** Sends its form, once: pressed again while the form is under way it does nothing. */
export function SubmitButton({ children, waiting, ...look }: SubmitButtonProps) {
  const { pending } = useFormStatus();
  return (
    <Button
      {...look}
      type="submit"
      aria-disabled={pending || undefined}
      onClick={(event) => {
        if (pending) event.preventDefault();
      }}
    >
      {pending ? waiting : children}
    </Button>
  );
}
