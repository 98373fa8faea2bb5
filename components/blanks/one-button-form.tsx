'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import type { ButtonKind } from '../ui/button';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import { blankRefusalWords } from './blank-refusal-words';

type OneButtonFormProps = { action: FormAction; words: string; waiting: string; kind?: ButtonKind };

/** Something that is done to a whole blank with one press. */
export function OneButtonForm({ action, words, waiting, kind }: OneButtonFormProps) {
  const t = useTranslations('blanks');
  const [state, send] = useActionState(action, unsent());
  return (
    <form action={send}>
      <FormProblems state={state} title={null} mistakes={[]} refusal={blankRefusalWords(t, state)} />
      <SubmitButton kind={kind} waiting={waiting}>
        {words}
      </SubmitButton>
    </form>
  );
}
