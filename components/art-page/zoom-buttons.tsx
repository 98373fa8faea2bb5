import type { ReactNode } from 'react';
import { useTranslations } from 'use-intl';
import type { PictureZoom } from './use-picture-zoom';
import styles from './zoom-buttons.module.css';

/** Further, closer, the whole picture, and each of its pixels as one dot of the screen. */
export function ZoomButtons({ zoom }: { zoom: PictureZoom }) {
  const t = useTranslations('art-page.frame');
  return (
    <fieldset className={styles.zoom}>
      <legend className="visually-hidden">{t('looking')}</legend>
      <ZoomButton label={t('further')} isOff={zoom.isWhole} onPress={zoom.further}>
        <path d="M3 10h14" />
      </ZoomButton>
      <ZoomButton label={t('closer')} onPress={zoom.closer}>
        <path d="M3 10h14M10 3v14" />
      </ZoomButton>
      <ZoomButton label={t('whole')} isOff={zoom.isWhole} onPress={zoom.whole}>
        <path d="M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4" />
      </ZoomButton>
      <button
        type="button"
        className={styles.square}
        aria-pressed={zoom.isOneToOne}
        title={t('oneToOneHint')}
        onClick={zoom.oneToOne}
      >
        {t('oneToOne')}
      </button>
    </fieldset>
  );
}

type ZoomButtonProps = { label: string; isOff?: boolean; onPress: () => void; children: ReactNode };

function ZoomButton({ label, isOff, onPress, children }: ZoomButtonProps) {
  return (
    <button
      type="button"
      className={styles.square}
      aria-label={label}
      title={label}
      aria-disabled={isOff || undefined}
      onClick={() => {
        if (!isOff) onPress();
      }}
    >
      <svg viewBox="0 0 20 20" aria-hidden="true">
        {children}
      </svg>
    </button>
  );
}
