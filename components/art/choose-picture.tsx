import { type ChangeEvent, type Ref, useEffect, useId, useState } from 'react';
import { Button } from '../ui/button';
import { ACCEPTED_ART } from './accepted-art';
import styles from './choose-picture.module.css';

type ChoosePictureProps = {
  field?: Ref<HTMLInputElement>;
  words: string;
  hint: string;
  /** On the press that sends what was chosen, where no script does. */
  send: string;
  busy: boolean;
  onChange: (event: ChangeEvent<HTMLInputElement>) => void;
};

/** On a phone: one large place to choose pictures at. Without scripts one can be chosen, and goes with a press more. */
export function ChoosePicture({ field, words, hint, send, busy, onChange }: ChoosePictureProps) {
  const id = useId();
  const [isLive, setLive] = useState(false);
  useEffect(() => setLive(true), []);
  return (
    <>
      <div className={styles.choose} data-busy={busy || undefined}>
        <input
          ref={field}
          id={id}
          type="file"
          name="picture"
          required
          accept={ACCEPTED_ART}
          multiple={isLive}
          disabled={busy}
          aria-describedby={`${id}-hint`}
          onChange={onChange}
        />
        <label htmlFor={id}>{words}</label>
      </div>
      <p id={`${id}-hint`} className={styles.hint}>
        {hint}
      </p>
      {isLive ? null : (
        <Button kind="primary" wide type="submit">
          {send}
        </Button>
      )}
    </>
  );
}
