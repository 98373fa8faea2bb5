import { useTranslations } from 'use-intl';
import { Swatch } from './colour-field';
import styles from './ground-choice.module.css';

type GroundChoiceProps = {
  cloths: readonly { readonly name: string; readonly hex: string }[];
  hex: string | null;
  onHex: (hex: string | null) => void;
};

/** What the picture lies on: checks, which show what is clear, or a cloth of the job. */
export function GroundChoice({ cloths, hex, onHex }: GroundChoiceProps) {
  const t = useTranslations('art-page.ground');
  return (
    <fieldset className={styles.grounds}>
      <legend className="visually-hidden">{t('label')}</legend>
      <button type="button" className={styles.ground} aria-pressed={hex === null} onClick={() => onHex(null)}>
        <svg viewBox="0 0 10 10" className={styles.checks} aria-hidden="true">
          <path d="M0 0h5v5H0zM5 5h5v5H5z" />
        </svg>
        {t('checks')}
      </button>
      {cloths.map((cloth) => (
        <button
          key={`${cloth.name} ${cloth.hex}`}
          type="button"
          className={styles.ground}
          aria-pressed={cloth.hex === hex}
          onClick={() => onHex(cloth.hex)}
        >
          <Swatch hex={cloth.hex} />
          {cloth.name}
        </button>
      ))}
    </fieldset>
  );
}
