'use client';

import { useTranslations } from 'use-intl';
import { CheckField } from '../ui/check-field';
import { FieldGroup } from '../ui/field-group';
import { TextField } from '../ui/text-field';
import type { Mistakes } from '../ui/use-mistakes';
import styles from './cloth-choice.module.css';
import { OWN_CLOTH, PRESET_CLOTH_IDS, PRESET_CLOTHS } from './preset-cloths';

type ClothChoiceProps = {
  /** Makes ids unique among several forms on one page. */
  formId: string;
  typed: Readonly<Record<string, string>>;
  mistakes: Mistakes;
};

/** A cloth colour: one of the usual ones, or a name and a colour of one's own. */
export function ClothChoice({ formId, typed, mistakes }: ClothChoiceProps) {
  const t = useTranslations('garments.clothChoice');
  const choices = [
    ...PRESET_CLOTH_IDS.map((id) => ({ id: id as string, words: t(`preset.${id}`), hex: PRESET_CLOTHS[id] as string })),
    { id: OWN_CLOTH, words: t('own'), hex: null },
  ];
  return (
    <FieldGroup inline id={`${formId}-cloth`} label={t('legend')} error={mistakes.of('cloth')}>
      <div className={styles.choices}>
        {choices.map(({ id, words, hex }) => (
          <label key={`${id} ${typed.cloth === id}`} className={styles.choice}>
            <input type="radio" name="cloth" value={id} defaultChecked={typed.cloth === id} className={styles.radio} />
            <svg viewBox="0 0 24 24" aria-hidden="true" className={styles.swatch}>
              {hex === null ? (
                <path d="M12 5v14M5 12h14" className={styles.plus} />
              ) : (
                <rect width="24" height="24" fill={hex} />
              )}
            </svg>
            <span>{words}</span>
          </label>
        ))}
      </div>
      <div className={styles.own}>
        <TextField
          id={`${formId}-ownName`}
          name="ownName"
          label={t('ownName')}
          hint={t('ownNameHint')}
          error={mistakes.of('ownName')}
          defaultValue={typed.ownName}
          width="middle"
          maxLength={60}
        />
        <TextField
          id={`${formId}-ownHex`}
          name="ownHex"
          type="color"
          label={t('ownHex')}
          error={mistakes.of('ownHex')}
          defaultValue={typed.ownHex ?? '#7C93AE'}
          width="short"
        />
      </div>
      <CheckField
        id={`${formId}-heather`}
        name="heather"
        value="yes"
        label={t('heather')}
        defaultChecked={typed.heather === 'yes'}
      />
    </FieldGroup>
  );
}
