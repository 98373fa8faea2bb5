'use client';

import { useTranslations } from 'use-intl';
import { chartFieldId } from './chart-fields';
import { type ColourRow, colourField } from './colour-fields';
import styles from './colour-line.module.css';

type ColourLineProps = {
  row: ColourRow;
  /** Counts from 1. */
  number: number;
  secondPart: string | null;
  wrong: Readonly<Record<string, string>>;
  onChange: (row: ColourRow) => void;
  onRemove: () => void;
};

/** One colour: how it looks, what it is called, whether it is a heather, and the second cloth where there is one. */
export function ColourLine({ row, number, secondPart, wrong, onChange, onRemove }: ColourLineProps) {
  const t = useTranslations('blanks.colours');
  const colour = row.name.trim() || t('number', { number });
  const field = (name: string) => ({ id: chartFieldId(name), name, 'aria-invalid': name in wrong || undefined });
  return (
    <li className={styles.colour}>
      <input
        {...field(colourField.hex(row.id))}
        type="color"
        aria-label={t('hexOf', { colour })}
        value={row.hex}
        className={styles.look}
        onChange={({ target }) => onChange({ ...row, hex: target.value.toUpperCase() })}
      />
      <input
        {...field(colourField.name(row.id))}
        aria-label={t('nameOf', { number })}
        value={row.name}
        maxLength={80}
        autoComplete="off"
        placeholder={t('name')}
        className={styles.name}
        onChange={({ target }) => onChange({ ...row, name: target.value })}
      />
      <label className={styles.tick}>
        <input
          type="checkbox"
          name={colourField.heather(row.id)}
          value="yes"
          aria-label={t('heatherOf', { colour })}
          checked={row.heather}
          onChange={({ target }) => onChange({ ...row, heather: target.checked })}
        />
        {t('heather')}
      </label>
      {secondPart === null ? null : (
        <SecondCloth row={row} colour={colour} part={secondPart} field={field} onChange={onChange} />
      )}
      <button type="button" aria-label={t('remove', { colour })} className={styles.remove} onClick={onRemove}>
        <svg viewBox="0 0 16 16" aria-hidden="true">
          <path d="m3 3 10 10M13 3 3 13" />
        </svg>
      </button>
    </li>
  );
}

type SecondClothProps = Pick<ColourLineProps, 'row' | 'onChange'> & {
  colour: string;
  part: string;
  field: (name: string) => { id: string; name: string };
};

function SecondCloth({ row, colour, part, field, onChange }: SecondClothProps) {
  const t = useTranslations('blanks.colours');
  return (
    <span className={styles.second}>
      <label className={styles.tick}>
        <input
          type="checkbox"
          name={colourField.hasSecond(row.id)}
          value="yes"
          checked={row.hasSecond}
          onChange={({ target }) => onChange({ ...row, hasSecond: target.checked })}
        />
        {t('second', { part })}
      </label>
      {row.hasSecond ? (
        <>
          <input
            {...field(colourField.secondHex(row.id))}
            type="color"
            aria-label={t('secondHexOf', { part, colour })}
            value={row.secondHex}
            className={styles.look}
            onChange={({ target }) => onChange({ ...row, secondHex: target.value.toUpperCase() })}
          />
          <input
            {...field(colourField.secondName(row.id))}
            aria-label={t('secondNameOf', { part, colour })}
            value={row.secondName}
            maxLength={80}
            autoComplete="off"
            placeholder={t('secondName', { part })}
            className={styles.name}
            onChange={({ target }) => onChange({ ...row, secondName: target.value })}
          />
        </>
      ) : null}
    </span>
  );
}
