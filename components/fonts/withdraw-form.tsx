'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import { FormNotice } from '../ui/form-notice';
import { type FormAction, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';

/** Takes a font of the shop's own off the list. */
export function WithdrawForm({ action, label }: { action: FormAction; label: string }) {
  const t = useTranslations('fonts');
  const [state, send] = useActionState(action, unsent());
  return (
    <form action={send} aria-label={label}>
      {state.refusal === null ? null : <FormNotice kind="stop" title={t('gone')} />}
      <SubmitButton kind="quiet" waiting={t('withdrawing')}>
        {t('withdraw')}
      </SubmitButton>
    </form>
  );
}
