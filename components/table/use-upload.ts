import { useCallback, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { Messages } from '@/lib/messages/catalogue';
import { type Picture, uploadPicture } from './upload-picture';

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
  const art = useTranslations('art');
  const t = useTranslations('table.add');
  const [progress, setProgress] = useState<UploadProgress>({ kind: 'idle' });

  const sentenceFor = useCallback(
    (reason: string, kind: string): string => {
      if (reason === 'signedOut') return art('signIn');
      const key = `refused.${reason}` as `refused.${keyof Messages['art']['refused']}`;
      return art.has(key) ? art(key, { kind }) : t('notReached');
    },
    [art, t],
  );

  const take = useCallback(
    async (file: File) => {
      const { name } = file;
      setProgress({ kind: 'sending', name, share: 0 });
      const uploaded = await uploadPicture(jobId, file, (share) => setProgress({ kind: 'sending', name, share }));
      setProgress(
        uploaded.ok ? { kind: 'idle' } : { kind: 'refused', sentence: sentenceFor(uploaded.reason, uploaded.kind) },
      );
      return uploaded.ok ? uploaded.picture : null;
    },
    [jobId, sentenceFor],
  );
  return { progress, take };
}
