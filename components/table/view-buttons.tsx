import { type ReactNode, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { Box } from '@/lib/domain/geometry/box';
import { classNames } from '../ui/class-names';
import styles from './paper.module.css';
import { ScreenSizeDialog } from './screen-size-dialog';
import type { PaperView } from './use-paper-view';
import { useScreenSize } from './use-screen-size';
import { VIEW_BUTTON_IDS } from './view-acts';

/** How much closer one press brings the garment (by eye). */
const CLOSER = 1.25;
/** Scales this near to each other look the same. */
const SAME_SCALE = 1e-3;

type ViewButtonsProps = {
  view: PaperView | null;
  /** The print in hand with what is measured around it, mm; null without one. */
  print: Box | null;
};

/** Closer, further, the whole garment again, the print in hand, and real size once the screen is known. */
export function ViewButtons({ view, print }: ViewButtonsProps) {
  const t = useTranslations('table.paper');
  const screen = useScreenSize();
  const [isAsking, setAsking] = useState(false);
  const { pxPerMm } = screen;
  const isReal = pxPerMm !== null && view !== null && Math.abs(view.viewport.pxPerMm / pxPerMm - 1) < SAME_SCALE;
  // Pressed at real size already, it is the size that is in doubt.
  const toRealSize = () => (pxPerMm === null || isReal ? setAsking(true) : view?.showAt(pxPerMm));
  return (
    <fieldset className={styles.view}>
      <legend className="visually-hidden">{t('looking')}</legend>
      <Square id="further" label={t('further')} onPress={() => view?.zoom(1 / CLOSER)}>
        <path d="M3 10h14" />
      </Square>
      <Square id="closer" label={t('closer')} onPress={() => view?.zoom(CLOSER)}>
        <path d="M3 10h14M10 3v14" />
      </Square>
      <Square id="whole" label={t('whole')} isOff={!view || view.isFitted} onPress={() => view?.fit()}>
        <path d="M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4" />
      </Square>
      <Square id="toPrint" label={t('toPrint')} isOff={!print} onPress={() => print && view?.show(print)}>
        <path d="M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4M7 7h6v6H7z" />
      </Square>
      <Square id="realSize" label={isReal ? t('realSizeAgain') : t('realSize')} isOn={isReal} onPress={toRealSize}>
        <path d="M2 6h16v8H2zM6 6v4M10 6v5M14 6v4" />
      </Square>
      {isAsking ? (
        <ScreenSizeDialog
          dotsPerMm={screen.dotsPerMm}
          onClose={() => setAsking(false)}
          onFound={(dots) => {
            setAsking(false);
            screen.keep(dots);
            view?.showAt(dots / window.devicePixelRatio);
          }}
        />
      ) : null}
    </fieldset>
  );
}

type SquareProps = {
  id: keyof typeof VIEW_BUTTON_IDS;
  label: string;
  isOff?: boolean;
  isOn?: boolean;
  onPress: () => void;
  children: ReactNode;
};

function Square({ id, label, isOff, isOn, onPress, children }: SquareProps) {
  return (
    <button
      id={VIEW_BUTTON_IDS[id]}
      type="button"
      className={classNames(styles.square, isOn && styles.up)}
      aria-label={label}
      title={label}
      aria-pressed={isOn}
      disabled={isOff}
      onClick={onPress}
    >
      <svg viewBox="0 0 20 20" aria-hidden="true">
        {children}
      </svg>
    </button>
  );
}
