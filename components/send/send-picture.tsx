'use client';

import { useState, useSyncExternalStore } from 'react';
import { useTranslations } from 'use-intl';
import { Button, buttonClass } from '../ui/button';
import styles from './send-picture.module.css';

type SendPictureProps = {
  src: string;
  alt: string;
  /** What the file is saved as. */
  fileName: string;
};

const neverChanges = () => () => undefined;

/** Whether this browser hands files to other apps; false while the page is still the server's. */
function useCanShareFiles(): boolean {
  return useSyncExternalStore(
    neverChanges,
    () => navigator.canShare?.({ files: [new File([], 'a.png', { type: 'image/png' })] }) ?? false,
    () => false,
  );
}

/** The whole revision as one picture, to be saved or handed to the device's own message apps. */
export function SendPicture({ src, alt, fileName }: SendPictureProps) {
  const t = useTranslations('revision');
  const canShare = useCanShareFiles();
  const [progress, setProgress] = useState<'idle' | 'fetching' | 'failed'>('idle');

  async function share(): Promise<void> {
    setProgress('fetching');
    try {
      const response = await fetch(src);
      if (!response.ok) throw new Error(`the picture came back with ${response.status}`);
      await navigator.share({ files: [new File([await response.blob()], fileName, { type: 'image/png' })] });
      setProgress('idle');
    } catch (error) {
      // Closing the device's own sheet without choosing anything is not a failure.
      setProgress(error instanceof DOMException && error.name === 'AbortError' ? 'idle' : 'failed');
    }
  }

  return (
    <div className={styles.picture}>
      <a href={src} className={styles.preview}>
        {/* biome-ignore lint/performance/noImgElement: made by our own server, shown as it will be sent */}
        <img src={src} alt={alt} loading="lazy" />
      </a>
      <div className={styles.actions}>
        <a href={src} download={fileName} className={buttonClass({})}>
          {t('pictureDownload')}
        </a>
        {canShare ? (
          <Button onClick={() => void share()} aria-disabled={progress === 'fetching' || undefined}>
            {t('pictureShare')}
          </Button>
        ) : null}
      </div>
      <p role="status" className={styles.came}>
        {progress === 'fetching' ? t('pictureSharing') : null}
        {progress === 'failed' ? t('pictureShareFailed') : null}
      </p>
    </div>
  );
}
