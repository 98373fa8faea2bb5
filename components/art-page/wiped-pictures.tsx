import { useId } from 'react';
import type { Spot } from '@/lib/domain/art/art-facts';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import type { Matrix } from '@/lib/domain/geometry/matrix';
import type { ShownPicture } from './fetch-preview';
import { PictureLayer } from './picture-layer';
import styles from './wiped-pictures.module.css';

/** A picture and the steps it is after. */
export type SteppedPicture = { readonly steps: readonly MendStep[]; readonly picture: ShownPicture };

type WipedPicturesProps = {
  artId: string;
  before: SteppedPicture;
  after: SteppedPicture;
  /** Where the one before lies in the one after. */
  place: Matrix;
  /** How much of the width, from the left, shows the one before: 0 to 1. */
  wipe: number;
  unit: number;
  seen: Spot | null;
};

/** One picture over the other, divided by an upright line: before on its left, after on its right. */
export function WipedPictures({ artId, before, after, place, wipe, unit, seen }: WipedPicturesProps) {
  const id = useId();
  const { widthPx, heightPx } = after.picture;
  const x = widthPx * wipe;
  return (
    <>
      <clipPath id={`${id}-before`}>
        <rect width={x} height={heightPx} />
      </clipPath>
      <clipPath id={`${id}-after`}>
        <rect x={x} width={widthPx - x} height={heightPx} />
      </clipPath>
      <g clipPath={`url(#${id}-before)`}>
        <g transform={`matrix(${place.join(' ')})`}>
          <PictureLayer artId={artId} {...before} seen={isAsLaid(place) ? seen : null} />
        </g>
      </g>
      <g clipPath={`url(#${id}-after)`}>
        <PictureLayer artId={artId} {...after} seen={seen} />
      </g>
      {wipe > 0 && wipe < 1 ? (
        <g aria-hidden="true" className={styles.divide}>
          <path d={`M${x} 0V${heightPx}`} className={styles.halo} />
          <path d={`M${x} 0V${heightPx}`} className={styles.line} />
          <path d="M-5 0L-14 -7V7ZM5 0L14 -7V7Z" transform={`translate(${x} ${heightPx / 2}) scale(${unit})`} />
        </g>
      ) : null}
    </>
  );
}

function isAsLaid([a, b, c, d, e, f]: Matrix): boolean {
  return a === 1 && b === 0 && c === 0 && d === 1 && e === 0 && f === 0;
}
