import { useTranslations } from 'use-intl';
import styles from './colour-field.module.css';

type ColourFieldProps = {
  name: string;
  label: string;
  hex: string;
  /** Colours to take with one press. */
  offered: readonly string[];
  onHex: (hex: string) => void;
  /** One of several in a list that says what they are. */
  isOneOfMany?: boolean;
};

/** A colour: one that is offered, or any other. */
export function ColourField({ name, label, hex, offered, onHex, isOneOfMany = false }: ColourFieldProps) {
  const t = useTranslations('art-page.colour');
  return (
    <fieldset className={styles.field}>
      <legend className={isOneOfMany ? 'visually-hidden' : styles.legend}>{label}</legend>
      <div className={styles.row}>
        <label className={styles.own}>
          <span className="visually-hidden">{t('any', { label })}</span>
          <input name={name} type="color" value={hex.toLowerCase()} onChange={({ target }) => onHex(target.value)} />
          <span aria-hidden="true">{hex.toUpperCase()}</span>
        </label>
        {offered.map((each) => (
          <button
            key={each}
            type="button"
            className={styles.offered}
            aria-label={t('take', { hex: each.toUpperCase() })}
            title={each.toUpperCase()}
            aria-pressed={same(each, hex)}
            onClick={() => onHex(each)}
          >
            <Swatch hex={each} />
          </button>
        ))}
      </div>
    </fieldset>
  );
}

/** A square of a colour. */
export function Swatch({ hex }: { hex: string }) {
  return (
    <svg viewBox="0 0 10 10" className={styles.swatch} aria-hidden="true">
      <rect width="10" height="10" fill={hex} />
    </svg>
  );
}

function same(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}
