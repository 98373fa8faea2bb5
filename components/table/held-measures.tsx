import { useTranslations } from 'use-intl';
import type { Point } from '@/lib/domain/geometry/point';
import type { PlacedPrint } from '@/lib/domain/layout/placement';
import { printHeightUm } from '@/lib/domain/layout/readings';
import { formatLength } from '@/lib/domain/measure/format-length';
import { type LengthUnit, mmFromUm } from '@/lib/domain/measure/length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { nearestSeam } from '@/lib/editor/nearest-seam';
import type { GuideLine } from '@/lib/editor/neighbours';
import { pxAt, type Viewport } from '@/lib/editor/viewport';
import { classNames } from '../ui/class-names';
import styles from './held-measures.module.css';
import { STRIP_PX, TapeStrip } from './tape-strip';
import { YARDSTICK_PX } from './use-paper-view';

type HeldMeasuresProps = {
  chosen: ChosenPrint;
  placed: PlacedPrint;
  /** The corners of its frame, mm on the flat. */
  corners: readonly Point[];
  guides: readonly GuideLine[];
  unit: LengthUnit;
  viewport: Viewport;
  /** Where the slips begin, CSS pixels. */
  freeToPx: number;
  onDark: boolean;
};

/** How far beside the print the tape of its height lies, CSS pixels (by eye). */
const ASIDE_PX = 22;

/** While a print is moved, sized or turned: its height, how far the nearest seam is, and what it is caught at. */
export function HeldMeasures({ chosen, placed, corners, guides, unit, viewport, freeToPx, onDark }: HeldMeasuresProps) {
  const t = useTranslations('table');
  const { print, group, flat } = chosen;
  const { inkBox } = placed;
  const heightUm = printHeightUm(print.content, group);
  // On the side where no drop is measured: that of the centre line.
  const inwards = inkBox.x + inkBox.width / 2 >= 0 ? -1 : 1;
  const middle = pxAt(viewport, { x: inkBox.x + inkBox.width / 2, y: inkBox.y + inkBox.height / 2 });
  const reach = Math.max(...corners.map((corner) => inwards * (pxAt(viewport, corner).x - middle.x)));
  const x = middle.x + inwards * (reach + ASIDE_PX);
  const halfPx = (mmFromUm(heightUm) / 2) * viewport.pxPerMm;
  const [top, foot] = [
    { x, y: middle.y - halfPx },
    { x, y: middle.y + halfPx },
  ];
  const seam = nearestSeam(placed, flat);
  const seamWords =
    seam &&
    (seam.um > 0
      ? t('paper.toLine', { length: formatLength(seam.um, unit), line: t('fit.line', { line: seam.line }) })
      : t('paper.onLine', { line: t('fit.line', { line: seam.line }) }));
  const [ink, stitch] = seam ? [pxAt(viewport, seam.from), pxAt(viewport, seam.to)] : [middle, middle];
  const strip = { unit, pxPerMm: viewport.pxPerMm };
  return (
    <>
      <svg className={styles.marks} aria-hidden="true">
        {guides.map((guide, index) => {
          const [from, to] = [pxAt(viewport, guide.from), pxAt(viewport, guide.to)];
          return (
            <line
              // biome-ignore lint/suspicious/noArrayIndexKey: guides have no names; their order is what they are
              key={index}
              {...{ x1: from.x, y1: from.y, x2: to.x, y2: to.y }}
              className={classNames(styles.guide, onDark && styles.onDark)}
            />
          );
        })}
        <TapeStrip from={top} to={foot} {...strip} />
        {seam && seam.um > 0 ? <TapeStrip from={ink} to={stitch} {...strip} /> : null}
      </svg>
      <Chip at={{ x: x + inwards * (STRIP_PX / 2 + 5), y: middle.y }} towards={inwards}>
        {t('paper.tall', { height: formatLength(heightUm, unit) })}
      </Chip>
      {seam && seamWords ? <Chip {...besideSeam(ink, stitch, seamWords, freeToPx)}>{seamWords}</Chip> : null}
    </>
  );
}

/** What a letter of a chip takes, CSS pixels. */
const LETTER_PX = 8;

/** Past the seam, seen from the print, so that neither the tape nor the art is covered; above it where the slips begin. */
function besideSeam(ink: Point, stitch: Point, words: string, freeToPx: number): { at: Point; towards: 1 | -1 } {
  const towards = stitch.x >= ink.x ? 1 : -1;
  const room = towards > 0 ? freeToPx - stitch.x : stitch.x - YARDSTICK_PX.beside;
  if (room >= words.length * LETTER_PX + 24) return { at: { x: stitch.x + towards * 10, y: stitch.y }, towards };
  const edge = towards > 0 ? freeToPx - 6 : YARDSTICK_PX.beside + 6;
  return { at: { x: edge, y: Math.min(stitch.y, ink.y) - 26 }, towards: towards > 0 ? -1 : 1 };
}

function Chip({ at, towards, children }: { at: Point; towards: 1 | -1; children: string }) {
  return (
    <span
      aria-hidden="true"
      className={classNames(styles.chip, towards < 0 && styles.toLeft)}
      style={{ transform: `translate(${at.x}px, ${at.y}px)` }}
    >
      <span>{children}</span>
    </span>
  );
}
