'use client';

import { type ReactNode, useEffect, useRef } from 'react';
import { type FieldMistake, FormNotice } from './form-notice';
import type { FormState } from './form-state';

type FormProblemsProps = {
  state: FormState;
  /** Said above a list of mistakes. */
  title: ReactNode;
  mistakes: readonly FieldMistake[];
  /** Said when the form was refused as a whole. */
  refusal: ReactNode;
};

/** What is wrong with a form that was sent, above it. It takes the focus as it appears, so that it is found and heard. */
export function FormProblems({ state, title, mistakes, refusal }: FormProblemsProps) {
  const place = useRef<HTMLDivElement>(null);
  const isWrong = state.refusal !== null || mistakes.length > 0;
  useEffect(() => {
    // Each answer of the server is a new state, so a second refusal is announced as the first one was.
    if (state.refusal !== null || Object.keys(state.mistakes).length > 0) {
      place.current?.querySelector<HTMLElement>('[tabindex]')?.focus();
    }
  }, [state]);
  if (!isWrong) return null;
  return (
    <div ref={place}>
      <FormNotice kind="stop" title={state.refusal === null ? title : refusal} mistakes={mistakes} />
    </div>
  );
}
