'use client';

import { useTranslations } from 'use-intl';
import type { StyleColour } from '@/lib/domain/garment/blank-style';
import { CheckField } from '../ui/check-field';
import { FieldGroup } from '../ui/field-group';
import { TextField } from '../ui/text-field';
import type { Mistakes } from '../ui/use-mistakes';
import { colourChoice } from './chosen-cloth';
import styles from './cloth-choice.module.css';
import { OWN_CLOTH, PRESET_CLOTH_IDS, PRESET_CLOTHS } from './preset-cloths';
import { SecondClothChoice } from './second-cloth-choice';

type ClothChoiceProps = {
  /** Makes ids unique among several forms on one page. */
  formId: string;
  typed: Readonly<Record<string, string>>;
  mistakes: Mistakes;
  /** The colours the blank can be had in; the usual ones are offered where it names none. */
  colours: readonly StyleColour[];
  /** What is of a second cloth, for garments that have one. */
  secondCloth: string | null;
};

/** A cloth colour: one the blank comes in or one of the usual ones, or a name and a colour of one's own. */
export function ClothChoice({ formId, typed, mistakes, colours, secondCloth }: ClothChoiceProps) {
  const t = useTranslations('garments.clothChoice');
  const listed = colours.length > 0;
  const choices = listed
    ? colours.map((colour) => ({ ...colour, id: colourChoice(colour) }))
    : PRESET_CLOTH_IDS.map((id) => ({ id: id as string, name: t(`preset.${id}`), hex: PRESET_CLOTHS[id] }));
  const heather = (
    <CheckField
      id={`${formId}-heather`}
      name="heather"
      value="yes"
      label={t('heather')}
      defaultChecked={typed.heather === 'yes'}
    />
  );
  const second = secondCloth ? (
    <SecondClothChoice formId={formId} label={secondCloth} typed={typed} mistakes={mistakes} />
  ) : null;
  return (
    <FieldGroup inline id={`${formId}-cloth`} label={t('legend')} error={mistakes.of('cloth')}>
      <div className={styles.choices}>
        {[...choices, { id: OWN_CLOTH, name: t('own'), hex: null }].map((choice) => (
          <label key={`${choice.id} ${typed.cloth === choice.id}`} className={styles.choice}>
            <input
              type="radio"
              name="cloth"
              value={choice.id}
              defaultChecked={typed.cloth === choice.id}
              className={styles.radio}
            />
            <Swatch {...choice} />
            <span>{choice.name}</span>
          </label>
        ))}
      </div>
      <div className={styles.own}>
        <div className={styles.nameAndHex}>
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
        {listed ? heather : null}
        {listed ? second : null}
      </div>
      {listed ? null : heather}
      {listed ? null : second}
    </FieldGroup>
  );
}

/** A colour as a square; two cloths as its two halves; a plus for one that is still to be chosen. */
function Swatch({ hex, secondHex }: { hex: string | null; secondHex?: string | undefined }) {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true" className={styles.swatch}>
      {hex === null ? (
        <path d="M12 5v14M5 12h14" className={styles.plus} />
      ) : (
        <>
          <rect width="24" height="24" fill={hex} />
          {secondHex ? <path d="M24 0v24H0Z" fill={secondHex} /> : null}
        </>
      )}
    </svg>
  );
}
