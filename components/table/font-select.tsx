import { useId } from 'react';
import { useTranslations } from 'use-intl';
import { FONT_KINDS, type FontChoices } from '@/lib/domain/lettering/font-choice';
import type { FontRef } from '@/lib/domain/lettering/lettering';
import styles from './slips.module.css';

type FontSelectProps = {
  value: FontRef;
  fonts: FontChoices;
  locked?: boolean;
  onChoose: (font: FontRef) => void;
};

/** The fonts that lettering can be set in, by what their faces are like. One that is no longer offered stays where it is used. */
export function FontSelect({ value, fonts, locked, onChoose }: FontSelectProps) {
  const id = useId();
  const t = useTranslations('lettering');
  const { offered } = fonts;
  const isOffered = offered.some(({ ref }) => ref.sha256 === value.sha256);
  const kinds = FONT_KINDS.filter((kind) => offered.some((each) => each.kind === kind));
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{t('font')}</label>
      <select
        id={id}
        value={value.sha256}
        disabled={locked}
        onChange={({ currentTarget }) => {
          const chosen = offered.find(({ ref }) => ref.sha256 === currentTarget.value);
          if (chosen) onChoose(chosen.ref);
        }}
      >
        {isOffered ? null : <option value={value.sha256}>{fontName(value)}</option>}
        {kinds.map((kind) => (
          <optgroup key={kind} label={t(`kind.${kind}`)}>
            {offered
              .filter((each) => each.kind === kind)
              .map(({ ref }) => (
                <option key={ref.sha256} value={ref.sha256}>
                  {fontName(ref)}
                </option>
              ))}
          </optgroup>
        ))}
      </select>
    </div>
  );
}

/** A font as it is called: `Oswald Bold`; a family of one face by its family alone. */
export function fontName({ family, style }: FontRef): string {
  return style === '' || style === 'Regular' ? family : `${family} ${style}`;
}
