'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { Button } from '../ui/button';
import { Disclosure } from '../ui/disclosure';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SelectField } from '../ui/select-field';
import { SubmitButton } from '../ui/submit-button';
import { TextField } from '../ui/text-field';
import { useMistakes } from '../ui/use-mistakes';
import { AlsoUnder } from './also-under';
import { chosenCloth } from './chosen-cloth';
import { ClothChoice } from './cloth-choice';
import styles from './garment-forms.module.css';
import { GarmentPreview } from './garment-preview';
import { isGeneric, type OfferedStyle } from './offered-style';
import { garmentRefusal } from './refusal-words';
import { SHOW_STYLE, startingFields } from './starting-fields';
import { styleOptions } from './style-options';
import { useShownStyle } from './use-shown-style';

const ID = 'new-garment';
/** What a garment is shown in while its own cloth is only half described. */
const UNDECIDED = { name: '?', hex: '#FFFFFF', heather: false };

type AddGarmentFormProps = {
  action: FormAction;
  offered: readonly [OfferedStyle, ...OfferedStyle[]];
  unit: LengthUnit;
  /** Whether it is open before anybody asks. */
  open: boolean;
};

/** A new garment: what it is, in which sizes, of which cloth; drawn as it is chosen. */
export function AddGarmentForm({ action, offered, unit, open }: AddGarmentFormProps) {
  const t = useTranslations('garments');
  const form = useTranslations('form');
  const [state, send] = useActionState(action, unsent(startingFields(offered[0])));
  const { place, style, isAnother, begin, typed, show, reread } = useShownStyle(offered, state);
  const mistakes = useMistakes(t, state, (field) => `${ID}-${field}`);
  const offer = { colours: style.colours, hasSecond: style.secondCloth !== null };
  const wasSent = state.refusal !== null || mistakes.all.length > 0 || state.typed[SHOW_STYLE] !== undefined;
  return (
    <Disclosure summary={t('add.title')} open={open || wasSent}>
      <form ref={place} action={send} noValidate onInput={reread} className={styles.adding}>
        <div className={styles.form}>
          {isAnother && state.refusal !== null ? null : (
            <FormProblems
              state={state}
              title={form('fix')}
              mistakes={mistakes.all}
              refusal={garmentRefusal(t, state)}
            />
          )}
          <input type="hidden" name="shown" value={style.styleId} />
          <SelectField
            id={`${ID}-style`}
            name="style"
            label={t('add.style')}
            error={mistakes.of('style')}
            defaultValue={state.typed.style}
            onChange={(event) => show(event.currentTarget.value)}
            options={styleOptions(t, offered)}
          />
          <noscript>
            <Button type="submit" name={SHOW_STYLE} value="yes">
              {t('add.show')}
            </Button>
          </noscript>
          <AlsoUnder formId={ID} style={style} offered={offered} typed={begin} />
          <div className={styles.pair}>
            <TextField
              // A field that was drawn once keeps its text; a new key brings the name of another style.
              key={`name ${begin.name}`}
              id={`${ID}-name`}
              name="name"
              label={t('add.name')}
              hint={t('add.nameHint')}
              error={mistakes.of('name')}
              defaultValue={begin.name}
              maxLength={80}
              required
            />
            {isGeneric(style) ? (
              <TextField
                key={`fabric ${begin.fabric}`}
                id={`${ID}-fabric`}
                name="fabric"
                label={t('add.fabric')}
                hint={t('add.fabricHint')}
                error={mistakes.of('fabric')}
                defaultValue={begin.fabric}
                maxLength={80}
              />
            ) : null}
          </div>
          <ClothChoice
            key={style.colours.length > 0 ? style.styleId : 'presets'}
            formId={ID}
            typed={begin}
            mistakes={mistakes}
            colours={style.colours}
            secondCloth={style.secondCloth}
          />
          <div>
            <SubmitButton kind="primary" waiting={t('add.waiting')}>
              {t('add.submit')}
            </SubmitButton>
          </div>
        </div>
        <div className={styles.shown}>
          <GarmentPreview style={style} cloth={chosenCloth(t, typed, offer) ?? UNDECIDED} unit={unit} />
        </div>
      </form>
    </Disclosure>
  );
}
