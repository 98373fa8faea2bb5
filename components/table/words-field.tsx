import { useId, useRef } from 'react';
import { useTranslations } from 'use-intl';
import { fieldMark } from '@/lib/domain/lettering/lettering-text';
import { classNames } from '../ui/class-names';
import styles from './lettering.module.css';
import slips from './slips.module.css';

type WordsFieldProps = {
  value: string;
  columns: readonly { readonly columnId: string; readonly name: string }[];
  /** What is wrong with it, in one sentence. */
  sentence: string | null;
  locked?: boolean;
  onWrite: (text: string) => void;
  onLeave?: () => void;
};

/** What lettering says: a line here is a line on the garment, and a button for each column of the list puts its words in. */
export function WordsField({ value, columns, sentence, locked, onWrite, onLeave }: WordsFieldProps) {
  const id = useId();
  const t = useTranslations('lettering');
  const area = useRef<HTMLTextAreaElement>(null);

  function insert(columnId: string): void {
    const { selectionStart: from = value.length, selectionEnd: to = value.length } = area.current ?? {};
    const mark = fieldMark(columnId);
    onWrite(value.slice(0, from) + mark + value.slice(to));
    const caret = from + mark.length;
    requestAnimationFrame(() => {
      area.current?.focus({ preventScroll: true });
      area.current?.setSelectionRange(caret, caret);
    });
  }

  return (
    <div className={classNames(slips.field, styles.words)}>
      <label htmlFor={id}>{t('words')}</label>
      <textarea
        ref={area}
        id={id}
        value={value}
        rows={Math.min(4, Math.max(1, value.split('\n').length))}
        readOnly={locked}
        spellCheck={false}
        autoComplete="off"
        dir="auto"
        aria-invalid={sentence ? true : undefined}
        aria-describedby={sentence ? `${id}-wrong` : `${id}-hint`}
        onChange={({ currentTarget }) => onWrite(currentTarget.value)}
        onBlur={onLeave}
      />
      {sentence ? (
        <p id={`${id}-wrong`} role="alert" className={slips.wrong}>
          {sentence}
        </p>
      ) : null}
      {locked ? null : (
        <>
          <fieldset className={styles.chips}>
            <legend className="visually-hidden">{t('fields')}</legend>
            {columns.map(({ columnId, name }) => (
              <button
                key={columnId}
                type="button"
                className={styles.chip}
                // The caret stays in the words.
                onPointerDown={(event) => event.preventDefault()}
                onClick={() => insert(columnId)}
              >
                <span aria-hidden="true">+ </span>
                <span className="visually-hidden">{t('field', { column: name })}</span>
                <span aria-hidden="true">{name}</span>
              </button>
            ))}
          </fieldset>
          <p id={`${id}-hint`} className={slips.line}>
            {t('wordsHint')}
          </p>
        </>
      )}
    </div>
  );
}
