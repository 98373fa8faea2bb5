import { useEffect, useId, useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import {
  LEAST_DOTS_PER_MM,
  MOST_DOTS_PER_MM,
  realPxPerMm,
  USUAL_DOTS_PER_MM,
  WALLET_CARD_MM,
} from '@/lib/editor/real-size';
import { Button } from '../ui/button';
import styles from './screen-size-dialog.module.css';

type ScreenSizeDialogProps = {
  /** What the screen was found to be before. */
  dotsPerMm: number | null;
  onFound: (dotsPerMm: number) => void;
  onClose: () => void;
};

/** One step of the slider: a hair's breadth over the width of a card, in a screen's dots per mm. */
const STEP = 0.01;

/** Finds out how fine a screen is: a card is laid against it and its outline drawn until the two are one size. */
export function ScreenSizeDialog({ dotsPerMm, onFound, onClose }: ScreenSizeDialogProps) {
  const t = useTranslations('table.screen');
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  const dotsPerPx = window.devicePixelRatio;
  const [dots, setDots] = useState(() => dotsPerMm ?? USUAL_DOTS_PER_MM * dotsPerPx);
  useEffect(() => {
    const before = document.activeElement;
    dialog.current?.showModal();
    return () => {
      if (before instanceof HTMLElement) before.focus({ preventScroll: true });
    };
  }, []);
  const pxPerMm = realPxPerMm(dots, dotsPerPx);
  // No screen is so fine that its card would not fit a window it is looked at in.
  const [least, most] = [Math.max(LEAST_DOTS_PER_MM, 2 * dotsPerPx), Math.min(MOST_DOTS_PER_MM, 8 * dotsPerPx)];
  return (
    <dialog
      ref={dialog}
      className={styles.dialog}
      aria-labelledby={`${id}-title`}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onKeyDown={(event) => event.stopPropagation()}
    >
      <h2 id={`${id}-title`}>{t('title')}</h2>
      <p id={`${id}-how`}>{t('how')}</p>
      <div className={styles.room}>
        <div
          className={styles.card}
          style={{
            width: WALLET_CARD_MM.width * pxPerMm,
            height: WALLET_CARD_MM.height * pxPerMm,
            borderRadius: WALLET_CARD_MM.corner * pxPerMm,
          }}
        >
          {t('card')}
        </div>
      </div>
      <label className={styles.slider}>
        <span>{t('size')}</span>
        <input
          type="range"
          min={least}
          max={most}
          step={STEP}
          value={dots}
          aria-describedby={`${id}-how`}
          aria-valuetext={t('wide', { px: Math.round(WALLET_CARD_MM.width * pxPerMm) })}
          onChange={({ currentTarget }) => setDots(Number(currentTarget.value))}
        />
      </label>
      <div className={styles.ends}>
        <Button kind="secondary" onClick={onClose}>
          {t('close')}
        </Button>
        <Button kind="primary" onClick={() => onFound(dots)}>
          {t('found')}
        </Button>
      </div>
    </dialog>
  );
}
