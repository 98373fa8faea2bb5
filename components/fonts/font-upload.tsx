'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useTranslations } from 'use-intl';
import type { Messages } from '@/lib/messages/catalogue';
import { FilePlace } from '../ui/file-place';
import { FormNotice } from '../ui/form-notice';
import styles from './font-upload.module.css';
import { uploadFont } from './upload-font';

type Progress =
  | { readonly kind: 'idle' }
  | { readonly kind: 'taking'; readonly name: string }
  | { readonly kind: 'taken'; readonly sentence: string }
  | { readonly kind: 'refused'; readonly sentence: string };

/** Takes in a font of the shop's own, chosen or dropped, and says in one sentence what is wrong with one that cannot be used. */
export function FontUpload() {
  const t = useTranslations('fonts');
  const router = useRouter();
  const [progress, setProgress] = useState<Progress>({ kind: 'idle' });

  function refusal(reason: string, name: string): string {
    if (reason === 'signedOut') return t('upload.signedOut');
    const key = `refused.${reason}` as `refused.${keyof Messages['fonts']['refused']}`;
    return t.has(key) ? t(key, { name }) : t('upload.notReached');
  }

  async function take(files: readonly File[]): Promise<void> {
    for (const file of files) {
      setProgress({ kind: 'taking', name: file.name });
      const came = await uploadFont(file);
      if (!came.ok) {
        setProgress({ kind: 'refused', sentence: refusal(came.reason, file.name) });
        break;
      }
      const { alreadyThere, family, style } = came;
      setProgress({
        kind: 'taken',
        sentence: t(`upload.${alreadyThere ? 'alreadyThere' : 'taken'}`, { family, style }),
      });
    }
    router.refresh();
  }

  return (
    <div className={styles.upload}>
      <FilePlace
        accept=".ttf,.otf,font/ttf,font/otf"
        takes="several"
        words={t('upload.add')}
        hint={t('upload.hint')}
        busy={progress.kind === 'taking'}
        onFiles={take}
      />
      <div role="status">
        {progress.kind === 'taking' ? <p>{t('upload.taking', { name: progress.name })}</p> : null}
        {progress.kind === 'taken' ? (
          <p className={styles.taken}>
            <span aria-hidden="true">✓ </span>
            {progress.sentence}
          </p>
        ) : null}
      </div>
      {progress.kind === 'refused' ? <FormNotice kind="stop" title={progress.sentence} /> : null}
    </div>
  );
}
