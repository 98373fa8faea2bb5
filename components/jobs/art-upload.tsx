'use client';

import { useRouter } from 'next/navigation';
import { useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import { ACCEPTED_ART } from '../art/accepted-art';
import { uploadPicture } from '../art/upload-picture';
import { UploadProgress } from '../art/upload-progress';
import { useRefusalWords } from '../art/use-refusal-words';
import { FilePlace } from '../ui/file-place';
import { FormNotice } from '../ui/form-notice';
import styles from './art-upload.module.css';

type Progress =
  | { readonly kind: 'idle' }
  | { readonly kind: 'taking'; readonly name: string; readonly share: number }
  | { readonly kind: 'taken'; readonly name: string; readonly alreadyThere: boolean }
  | { readonly kind: 'stopped'; readonly name: string }
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
  const [progress, setProgress] = useState<Progress>({ kind: 'idle' });
  const stopping = useRef<AbortController | null>(null);

  async function upload(file: File): Promise<Progress> {
    const { name } = file;
    const controller = new AbortController();
    stopping.current = controller;
    const onProgress = (share: number) => setProgress({ kind: 'taking', name, share });
    onProgress(0);
    const uploaded = await uploadPicture(jobId, file, onProgress, controller.signal);
    if (uploaded.ok) return { kind: 'taken', name, alreadyThere: uploaded.alreadyThere };
    if (uploaded.reason === 'stopped') return { kind: 'stopped', name };
    return { kind: 'refused', sentence: sentenceFor(uploaded) };
  }

  async function take(files: readonly File[]): Promise<void> {
    for (const file of files) {
      const came = await upload(file);
      setProgress(came);
      if (came.kind !== 'taken') break;
    }
    router.refresh();
  }

  return (
    <div className={styles.upload}>
      <FilePlace
        accept={ACCEPTED_ART}
        takes="several"
        words={more ? t('addMore') : t('add')}
        hint={t('hint')}
        busy={progress.kind === 'taking'}
        onFiles={take}
      />
      <div role="status">
        {progress.kind === 'taking' ? (
          <UploadProgress
            sending={(percent) => t('sending', { name: progress.name, percent })}
            reading={t('reading', { name: progress.name })}
            share={progress.share}
            stop={t('stop')}
            onStop={() => stopping.current?.abort()}
          />
        ) : null}
        {progress.kind === 'stopped' ? <p>{t('stopped', { name: progress.name })}</p> : null}
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
