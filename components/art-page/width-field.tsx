import { useState } from 'react';
import { useTranslations } from 'use-intl';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { LengthUnit, Micrometres } from '@/lib/domain/measure/length';
import { parseLength } from '@/lib/domain/measure/parse-length';
import styles from './width-field.module.css';

type WidthFieldProps = {
  widthUm: Micrometres;
  unit: LengthUnit;
  /** Widths the picture is laid out at, to take with one press. */
  laidOut: readonly { readonly widthUm: Micrometres; readonly where: string }[];
  onWidth: (widthUm: Micrometres) => void;
};

/** How wide the ink is printed, on a tape: what is said below is said of this width. */
export function WidthField({ widthUm, unit, laidOut, onWidth }: WidthFieldProps) {
  const t = useTranslations('art-page.width');
  const [typed, setTyped] = useState<string | null>(null);
  const refused = typed !== null && readWidth(typed, unit) === null;
  return (
    <div className={styles.width}>
      <label className={styles.label} htmlFor="width">
        {t('label')}
      </label>
      <div className={styles.tape}>
        <input
          id="width"
          name="width"
          className={styles.field}
          inputMode="text"
          autoComplete="off"
          value={typed ?? formatLength(widthUm, unit)}
          aria-invalid={refused || undefined}
          aria-describedby={refused ? 'width-error' : undefined}
          onChange={({ target }) => {
            setTyped(target.value);
            const read = readWidth(target.value, unit);
            if (read !== null) onWidth(read);
          }}
          onBlur={() => {
            if (!refused) setTyped(null);
          }}
        />
      </div>
      {refused ? (
        <p id="width-error" className={styles.error}>
          {t('refused')}
        </p>
      ) : null}
      {laidOut.map((each) => (
        <button
          key={`${each.where} ${each.widthUm}`}
          type="button"
          className={styles.laidOut}
          aria-pressed={each.widthUm === widthUm}
          onClick={() => {
            setTyped(null);
            onWidth(each.widthUm);
          }}
        >
          {t('as', { where: each.where, width: formatLength(each.widthUm, unit) })}
        </button>
      ))}
    </div>
  );
}

/** A width that can be pressed; null for anything else. */
function readWidth(typed: string, unit: LengthUnit): Micrometres | null {
  const read = parseLength(typed, unit);
  return read.ok && read.um >= 1_000 && read.um <= 2_000_000 ? read.um : null;
}
