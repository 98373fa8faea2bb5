'use client';

import { type ReactNode, useActionState } from 'react';
import { useTranslations } from 'use-intl';
import { CheckField } from '../ui/check-field';
import { FieldGroup } from '../ui/field-group';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import { TextField } from '../ui/text-field';
import { useMistakes } from '../ui/use-mistakes';
import { ClothChoice } from './cloth-choice';
import styles from './garment-forms.module.css';
import { type GarmentRefusal, refusalWords } from './refusal-words';

const ID = 'new-garment';

type AddGarmentFormProps = {
  action: FormAction;
  /** The charts its flats would be drawn from. */
  chart: ReactNode;
};

/** A new garment: what it is, in which sizes, of which cloth. */
export function AddGarmentForm({ action, chart }: AddGarmentFormProps) {
  const t = useTranslations('garments');
  const form = useTranslations('form');
  const kind = t('add.kinds.crewTee');
  const [state, send] = useActionState(
    action,
    unsent({ name: kind, adult: 'yes', fabric: t('add.fabricUsual'), cloth: 'white' }),
  );
  const mistakes = useMistakes(t, state, (field) => `${ID}-${field}`);
  return (
    <form action={send} noValidate className={styles.form}>
      <FormProblems
        state={state}
        title={form('fix')}
        mistakes={mistakes.all}
        refusal={state.refusal === null ? null : refusalWords(t, state.refusal as GarmentRefusal)}
      />
      <div className={styles.pair}>
        <TextField
          id={`${ID}-name`}
          name="name"
          label={t('add.name')}
          hint={t('add.nameHint')}
          error={mistakes.of('name')}
          defaultValue={state.typed.name}
          maxLength={80}
          required
        />
        <TextField
          id={`${ID}-fabric`}
          name="fabric"
          label={t('add.fabric')}
          hint={t('add.fabricHint')}
          error={mistakes.of('fabric')}
          defaultValue={state.typed.fabric}
          maxLength={80}
        />
      </div>
      <FieldGroup
        inline
        id={`${ID}-bands`}
        label={t('add.bands')}
        hint={t('add.bandsHint')}
        error={mistakes.of('bands')}
      >
        <div className={styles.ticks}>
          {(['adult', 'youth'] as const).map((band) => (
            <CheckField
              key={band}
              id={`${ID}-${band}`}
              name={band}
              value="yes"
              label={t(`add.band.${band}`)}
              defaultChecked={state.typed[band] === 'yes'}
            />
          ))}
        </div>
      </FieldGroup>
      <ClothChoice formId={ID} typed={state.typed} mistakes={mistakes} />
      {chart}
      <div>
        <SubmitButton kind="primary" waiting={t('add.waiting')}>
          {t('add.submit')}
        </SubmitButton>
      </div>
    </form>
  );
}
