'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useTranslations } from 'use-intl';
import type { Messages } from '@/lib/messages/catalogue';
import { FilePlace } from '../ui/file-place';
import { FormNotice } from '../ui/form-notice';
import { SelectField, type SelectOption } from '../ui/select-field';
import styles from './photograph-upload.module.css';
import { type PhotographPlace, uploadPhotograph } from './upload-photograph';

type PhotographUploadProps = {
  blankId: string;
  sides: readonly SelectOption[];
  sizes: readonly SelectOption[];
  colours: readonly SelectOption[];
  /** What is chosen first: the first that there is no photograph of. */
  first: PhotographPlace;
  there: readonly PhotographPlace[];
};

/** Takes in a photograph of one side of one size in one colour, and leads to setting it to scale. */
export function PhotographUpload({ blankId, sides, sizes, colours, first, there }: PhotographUploadProps) {
  const t = useTranslations('photographs.upload');
  const art = useTranslations('art');
  const router = useRouter();
  const [place, setPlace] = useState(first);
  const [progress, setProgress] = useState<'idle' | 'taking' | { refused: string }>('idle');
  const replaces = there.some(
    ({ sizeId, colourId, side }) => sizeId === place.sizeId && colourId === place.colourId && side === place.side,
  );

  function sentenceFor(reason: string, kind: string): string {
    if (reason === 'signedOut') return art('signIn');
    const key = `refused.${reason}` as `refused.${keyof Messages['photographs']['upload']['refused']}`;
    return t.has(key) ? t(key, { kind }) : t('notReached');
  }

  async function take(file: File | undefined): Promise<void> {
    if (!file) return;
    setProgress('taking');
    const came = await uploadPhotograph(blankId, place, file);
    if (!came.ok) return setProgress({ refused: sentenceFor(came.reason, came.kind) });
    router.push(`/blanks/${blankId}/photographs/${came.photographId}`);
  }

  return (
    <div className={styles.upload}>
      <div className={styles.of}>
        <SelectField
          name="side"
          label={t('side')}
          options={sides}
          value={place.side}
          onChange={({ target }) => setPlace({ ...place, side: target.value })}
        />
        <SelectField
          name="size"
          label={t('size')}
          options={sizes}
          value={place.sizeId}
          onChange={({ target }) => setPlace({ ...place, sizeId: target.value })}
        />
        <SelectField
          name="colour"
          label={t('colour')}
          options={colours}
          value={place.colourId}
          onChange={({ target }) => setPlace({ ...place, colourId: target.value })}
        />
      </div>
      <FilePlace
        accept="image/*"
        takes="one"
        words={t('choose')}
        hint={
          <span className={styles.hint}>
            {replaces ? <strong>{t('replaces')} </strong> : null}
            {t('hint')}
          </span>
        }
        busy={progress === 'taking'}
        onFiles={([file]) => take(file)}
      />
      <p role="status">{progress === 'taking' ? t('taking') : null}</p>
      {typeof progress === 'object' ? <FormNotice kind="stop" title={progress.refused} /> : null}
    </div>
  );
}
