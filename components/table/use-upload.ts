import { useCallback, useState } from 'react';
import { useTranslations } from 'use-intl';
import { type Picture, uploadPicture } from '../art/upload-picture';
import { useRefusalWords } from '../art/use-refusal-words';

export type UploadProgress =
  | { readonly kind: 'idle' }
  | { readonly kind: 'sending'; readonly name: string; readonly share: number }
  | { readonly kind: 'refused'; readonly sentence: string };

/** Takes in picture files for the job, one after another, and says what is wrong with one that cannot be used. */
export function useUpload(jobId: string): {
  progress: UploadProgress;
  /** The picture, or null where it was not taken: the progress then says why. */
  take: (file: File) => Promise<Picture | null>;
} {
  const t = useTranslations('table.add');
  const [progress, setProgress] = useState<UploadProgress>({ kind: 'idle' });

  const sentenceFor = useRefusalWords(t('notReached'));

  const take = useCallback(
    async (file: File) => {
      const { name } = file;
      setProgress({ kind: 'sending', name, share: 0 });
      const uploaded = await uploadPicture(jobId, file, (share) => setProgress({ kind: 'sending', name, share }));
      setProgress(uploaded.ok ? { kind: 'idle' } : { kind: 'refused', sentence: sentenceFor(uploaded) });
      return uploaded.ok ? uploaded.picture : null;
    },
    [jobId, sentenceFor],
  );
  return { progress, take };
}
