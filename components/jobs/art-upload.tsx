'use client';

import { useRouter } from 'next/navigation';
import { type DragEvent, useId, useState } from 'react';
import { useTranslations } from 'use-intl';
import { uploadPicture } from '../art/upload-picture';
import { useRefusalWords } from '../art/use-refusal-words';
import { FormNotice } from '../ui/form-notice';
import styles from './art-upload.module.css';

type Progress =
  | { readonly kind: 'idle' }
  | { readonly kind: 'taking'; readonly name: string }
  | { readonly kind: 'taken'; readonly name: string; readonly alreadyThere: boolean }
  | { readonly kind: 'refused'; readonly sentence: string };

type ArtUploadProps = {
  jobId: string;
  /** Whether the job has art already. */
  more: boolean;
};

/** Takes in a picture, chosen or dropped, and says in one sentence what is wrong with one that cannot be used. */
export function ArtUpload({ jobId, more }: ArtUploadProps) {
  const t = useTranslations('jobs.art');
  const sentenceFor = useRefusalWords(t('notReached'));
  const router = useRouter();
  const inputId = useId();
  const [progress, setProgress] = useState<Progress>({ kind: 'idle' });
  const [isOver, setIsOver] = useState(false);

  async function upload(file: File): Promise<Progress> {
    const uploaded = await uploadPicture(jobId, file);
    return uploaded.ok
      ? { kind: 'taken', name: file.name, alreadyThere: uploaded.alreadyThere }
      : { kind: 'refused', sentence: sentenceFor(uploaded) };
  }

  async function take(files: FileList | null): Promise<void> {
    for (const file of files ?? []) {
      setProgress({ kind: 'taking', name: file.name });
      const came = await upload(file);
      setProgress(came);
      if (came.kind === 'refused') break;
    }
    router.refresh();
  }

  function drop(event: DragEvent): void {
    event.preventDefault();
    setIsOver(false);
    void take(event.dataTransfer.files);
  }

  return (
    <div className={styles.upload}>
      <div
        className={styles.place}
        data-over={isOver || undefined}
        onDragOver={(event) => {
          event.preventDefault();
          setIsOver(true);
        }}
        onDragLeave={() => setIsOver(false)}
        onDrop={drop}
      >
        <input
          id={inputId}
          type="file"
          accept="image/png,image/jpeg"
          multiple
          disabled={progress.kind === 'taking'}
          className={styles.input}
          aria-describedby={`${inputId}-hint`}
          onChange={(event) => {
            void take(event.target.files).then(() => {
              event.target.value = '';
            });
          }}
        />
        <label htmlFor={inputId} className={styles.label}>
          {more ? t('addMore') : t('add')}
        </label>
        <p id={`${inputId}-hint`} className={styles.hint}>
          {t('hint')}
        </p>
      </div>
      <div role="status">
        {progress.kind === 'taking' ? <p>{t('taking', { name: progress.name })}</p> : null}
        {progress.kind === 'taken' ? (
          <p className={styles.taken}>
            <span aria-hidden="true">✓ </span>
            {t(progress.alreadyThere ? 'alreadyThere' : 'taken', { name: progress.name })}
          </p>
        ) : null}
      </div>
      {progress.kind === 'refused' ? <FormNotice kind="stop" title={progress.sentence} /> : null}
    </div>
  );
}
