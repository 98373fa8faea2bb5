import { memo, useId } from 'react';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { Viewport } from '@/lib/editor/viewport';
import { paperMarks, unitMm } from '@/lib/editor/yardstick';
import styles from './paper.module.css';

type PatternPaperProps = { unit: LengthUnit; viewport: Viewport; zeroY: number; widthPx: number; heightPx: number };

/**
 * Pattern paper: a dot at every inch or centimetre from where the print is measured, a cross at every fifth or tenth; fewer
 * of them as the garment goes further away.
 */
export const PatternPaper = memo(function PatternPaper({
  unit,
  viewport,
  zeroY,
  widthPx,
  heightPx,
}: PatternPaperProps) {
  const id = useId();
  const { dotEvery, crossEvery } = paperMarks(unit, viewport.pxPerMm);
  const gap = unitMm(unit) * viewport.pxPerMm * dotEvery;
  const every = crossEvery / dotEvery;
  const side = gap * every;
  const y = viewport.yPx + zeroY * viewport.pxPerMm;
  const places = Array.from({ length: every }, (_, index) => index * gap);
  return (
    <svg className={styles.dots} width={widthPx} height={heightPx} aria-hidden="true">
      <defs>
        <pattern id={id} x={viewport.xPx} y={y} width={side} height={side} patternUnits="userSpaceOnUse">
          {places.flatMap((down) =>
            places.map((across) =>
              down === 0 && across === 0 ? null : (
                <circle key={`${across}/${down}`} cx={across} cy={down} r={1.1} className={styles.dot} />
              ),
            ),
          )}
          {/* Dots and crosses on the edge of a tile are cut in half there, and completed by its neighbour. */}
          {places.slice(1).map((at) => (
            <g key={at}>
              <circle cx={side} cy={at} r={1.1} className={styles.dot} />
              <circle cx={at} cy={side} r={1.1} className={styles.dot} />
            </g>
          ))}
          {[0, side].flatMap((down) =>
            [0, side].map((across) => (
              <path
                key={`${across}/${down}`}
                d={`M${across - 4} ${down}h8M${across} ${down - 4}v8`}
                className={styles.cross}
              />
            )),
          )}
        </pattern>
      </defs>
      <rect width={widthPx} height={heightPx} fill={`url(#${id})`} />
    </svg>
  );
});
