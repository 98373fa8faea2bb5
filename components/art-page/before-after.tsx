import { useState } from 'react';
import { useTranslations } from 'use-intl';
import type { Matrix } from '@/lib/domain/geometry/matrix';
import type { Point } from '@/lib/domain/geometry/point';
import styles from './before-after.module.css';
import { BesidePair } from './beside-pair';
import type { SteppedPicture } from './wiped-pictures';

type BeforeAfterProps = {
  artId: string;
  cloths: readonly { readonly name: string; readonly hex: string }[];
  before: SteppedPicture;
  after: SteppedPicture | null;
  place: Matrix | null;
};

/** Before and after on the cloth of each garment, all at the same place when they are looked at closely. */
export function BeforeAfter({ artId, cloths, before, after, place }: BeforeAfterProps) {
  const t = useTranslations('art-page.beside');
  const [near, setNear] = useState<Point | null>(null);
  const shown = after ?? before;
  const { inkBox } = shown.picture.facts;
  const middle = { x: inkBox.x + inkBox.width / 2, y: inkBox.y + inkBox.height / 2 };
  return (
    <section aria-labelledby="beside-title" className={styles.section}>
      <div className={styles.head}>
        <h2 id="beside-title" className={styles.title}>
          {t('title')}
        </h2>
        <fieldset className={styles.ways}>
          <legend className="visually-hidden">{t('looking')}</legend>
          <button type="button" className={styles.way} aria-pressed={near === null} onClick={() => setNear(null)}>
            {t('whole')}
          </button>
          <button
            type="button"
            className={styles.way}
            aria-pressed={near !== null}
            aria-disabled={place === null}
            onClick={() => place && setNear(near ?? middle)}
          >
            {t('oneToOne')}
          </button>
        </fieldset>
      </div>
      <p className={styles.hint}>{near ? t('nearHint') : t('wholeHint')}</p>
      <div className={styles.pairs}>
        {cloths.map((cloth) => (
          <BesidePair
            key={`${cloth.name} ${cloth.hex}`}
            artId={artId}
            cloth={cloth}
            before={before}
            after={after}
            place={place}
            near={near}
            onNear={(at) => place && setNear(withinPicture(at, shown))}
          />
        ))}
      </div>
    </section>
  );
}

function withinPicture({ x, y }: Point, { picture: { widthPx, heightPx } }: SteppedPicture): Point {
  return { x: Math.min(widthPx, Math.max(0, x)), y: Math.min(heightPx, Math.max(0, y)) };
}
