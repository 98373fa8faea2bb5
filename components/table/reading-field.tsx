import { type ReactNode, useId } from 'react';
import { classNames } from '../ui/class-names';
import styles from './slips.module.css';
import type { useTypedText } from './use-typed-text';

type ReadingFieldProps = {
  label: ReactNode;
  typed: ReturnType<typeof useTypedText>;
  locked: boolean;
  /** Stands as the slip's own title: large, its label only spoken. */
  isTitle?: boolean;
};

/** A reading on a slip: label, field, and one sentence when what was typed cannot be set. */
export function ReadingField({ label, typed: { field, sentence }, locked, isTitle }: ReadingFieldProps) {
  const id = useId();
  return (
    <div className={classNames(styles.field, isTitle && styles.title)}>
      <label htmlFor={id} className={classNames(isTitle && 'visually-hidden')}>
        {label}
      </label>
      <input
        {...field}
        id={id}
        aria-invalid={sentence ? true : undefined}
        aria-describedby={sentence ? `${id}-wrong` : undefined}
        readOnly={locked}
        autoComplete="off"
        spellCheck={false}
        enterKeyHint="done"
      />
      {sentence ? (
        <p id={`${id}-wrong`} role="alert" className={styles.wrong}>
          {sentence}
        </p>
      ) : null}
    </div>
  );
}
