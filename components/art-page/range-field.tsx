import type { ReactNode } from 'react';
import styles from './range-field.module.css';

type RangeFieldProps = {
  name: string;
  label: string;
  /** The value as it is said. */
  reading: string;
  hint?: ReactNode;
  value: number;
  min: number;
  max: number;
  step?: number;
  onValue: (value: number) => void;
};

/** An amount to slide to, with what it comes to beside its name. */
export function RangeField({ name, label, reading, hint, value, min, max, step = 1, onValue }: RangeFieldProps) {
  return (
    <div className={styles.field}>
      <div className={styles.head}>
        <label htmlFor={name} className={styles.label}>
          {label}
        </label>
        <output htmlFor={name} className={styles.reading}>
          {reading}
        </output>
      </div>
      <input
        id={name}
        name={name}
        type="range"
        className={styles.range}
        value={value}
        min={min}
        max={max}
        step={step}
        aria-valuetext={reading}
        aria-describedby={hint ? `${name}-hint` : undefined}
        onChange={({ target }) => onValue(target.valueAsNumber)}
      />
      {hint ? (
        <p id={`${name}-hint`} className={styles.hint}>
          {hint}
        </p>
      ) : null}
    </div>
  );
}
