import { useTranslations } from 'use-intl';
import styles from './paper.module.css';
import type { PaperView } from './use-paper-view';

/** How much closer one press brings the garment (by eye). */
const CLOSER = 1.25;

/** Closer, further, and the whole garment again. */
export function ViewButtons({ view }: { view: PaperView | null }) {
  const t = useTranslations('table.paper');
  return (
    <fieldset className={styles.view}>
      <legend className="visually-hidden">{t('looking')}</legend>
      <button type="button" className={styles.square} aria-label={t('further')} onClick={() => view?.zoom(1 / CLOSER)}>
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M3 10h14" />
        </svg>
      </button>
      <button type="button" className={styles.square} aria-label={t('closer')} onClick={() => view?.zoom(CLOSER)}>
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M3 10h14M10 3v14" />
        </svg>
      </button>
      <button
        type="button"
        className={styles.square}
        aria-label={t('whole')}
        disabled={!view || view.isFitted}
        onClick={() => view?.fit()}
      >
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4" />
        </svg>
      </button>
    </fieldset>
  );
}
