'use client';

import { useTranslations } from 'use-intl';
import { SelectField } from '../ui/select-field';
import { TextField } from '../ui/text-field';
import type { Mistakes } from '../ui/use-mistakes';
import { SAME_CLOTH } from './chosen-cloth';
import styles from './cloth-choice.module.css';
import { OWN_CLOTH, PRESET_CLOTH_IDS } from './preset-cloths';

type SecondClothChoiceProps = {
  formId: string;
  /** What is of the second cloth: `Sleeves and collar`. */
  label: string;
  typed: Readonly<Record<string, string>>;
  mistakes: Mistakes;
};

/** The second cloth of a garment that has one: the same, a usual colour, or a name and a colour of one's own. */
export function SecondClothChoice({ formId, label, typed, mistakes }: SecondClothChoiceProps) {
  const t = useTranslations('garments.clothChoice');
  return (
    <div className={styles.second}>
      <SelectField
        id={`${formId}-second`}
        name="second"
        label={label}
        error={mistakes.of('second')}
        defaultValue={typed.second ?? SAME_CLOTH}
        options={[
          { value: SAME_CLOTH, label: t('same') },
          ...PRESET_CLOTH_IDS.map((id) => ({ value: id as string, label: t(`preset.${id}`) })),
          { value: OWN_CLOTH, label: t('own') },
        ]}
      />
      <div className={styles.secondOwn}>
        <TextField
          id={`${formId}-secondName`}
          name="secondName"
          label={t('secondName')}
          error={mistakes.of('secondName')}
          defaultValue={typed.secondName}
          width="middle"
          maxLength={60}
        />
        <TextField
          id={`${formId}-secondHex`}
          name="secondHex"
          type="color"
          label={t('secondHex')}
          error={mistakes.of('secondHex')}
          defaultValue={typed.secondHex ?? '#20344F'}
          width="short"
        />
      </div>
    </div>
  );
}
