'use client';

import { type DragEvent, type ReactNode, useId, useState } from 'react';
import styles from './file-place.module.css';

type FilePlaceProps = {
  accept: string;
  /** Several can be chosen at once, and let go over it too. */
  takes: 'one' | 'several';
  words: string;
  hint: ReactNode;
  /** While files are being taken in no others can be chosen. */
  busy: boolean;
  onFiles: (files: readonly File[]) => Promise<void>;
};

/** A place where files are chosen, or dropped where several can be. */
export function FilePlace({ accept, takes, words, hint, busy, onFiles }: FilePlaceProps) {
  const inputId = useId();
  const [isOver, setIsOver] = useState(false);

  function drop(event: DragEvent): void {
    event.preventDefault();
    setIsOver(false);
    void onFiles([...event.dataTransfer.files]);
  }

  const over = {
    onDragOver: (event: DragEvent) => {
      event.preventDefault();
      setIsOver(true);
    },
    onDragLeave: () => setIsOver(false),
    onDrop: drop,
  };
  return (
    <div className={styles.place} data-over={isOver || undefined} {...(takes === 'several' ? over : {})}>
      <input
        id={inputId}
        type="file"
        accept={accept}
        multiple={takes === 'several'}
        disabled={busy}
        className={styles.input}
        aria-describedby={`${inputId}-hint`}
        onChange={({ target }) => {
          void onFiles([...(target.files ?? [])]).then(() => {
            target.value = '';
          });
        }}
      />
      <label htmlFor={inputId} className={styles.label}>
        {words}
      </label>
      <p id={`${inputId}-hint`} className={styles.hint}>
        {hint}
      </p>
    </div>
  );
}
