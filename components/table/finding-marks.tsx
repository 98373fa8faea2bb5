import { memo, useMemo } from 'react';
import { useTranslations } from 'use-intl';
import { sharpnessLimits } from '@/lib/domain/art/sharpness';
import { distance, type Point } from '@/lib/domain/geometry/point';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import type { TypeCase } from '@/lib/domain/layout/type-case';
import { formatLength, formatLengthValue, formatLimit } from '@/lib/domain/measure/format-length';
import { type LengthUnit, UM_PER_INCH, UM_PER_MM } from '@/lib/domain/measure/length';
import { type PaperFinding, paperFindings } from '@/lib/editor/paper-findings';
import { paperOverlaps } from '@/lib/editor/paper-overlaps';
import { type Selection, selectPrint } from '@/lib/editor/selection';
import type { ShownFlat } from '@/lib/editor/shown-flat';
import { withSelection } from '@/lib/editor/table-editor';
import { pxAt, type Viewport } from '@/lib/editor/viewport';
import { classNames } from '../ui/class-names';
import { useArtChecks } from './art-checks';
import styles from './finding-marks.module.css';
import type { Change } from './use-reading';

type FindingMarksProps = {
  layout: LayoutDocument;
  selection: Selection;
  shown: ShownFlat;
  type: TypeCase | null;
  unit: LengthUnit;
  viewport: Viewport;
  /** Where the slips begin, CSS pixels: words do not go under them. */
  freeToPx: number;
  /** Corners of the print in hand, mm on the flat, that a hand has to reach. */
  handles: readonly Point[];
  change: Change;
};

/** The finest a tape reading shows. */
const FINEST_UM = { in: UM_PER_INCH / 8, cm: UM_PER_MM } as const;
/** Room the words of a mark take beside it, CSS pixels. */
const WORDS_PX = 260;

/**
 * What there is to say of the prints on the size shown, as small marks where it is the matter. A mark says it while it is
 * pointed at or has the focus; pressed, it takes its print in hand, whose slip then has the mend.
 */
export const FindingMarks = memo(function FindingMarks({
  layout,
  selection,
  shown,
  type,
  unit,
  viewport,
  freeToPx,
  handles,
  change,
}: FindingMarksProps) {
  const wordsOf = useFindingWords(unit);
  const { garment, offered, flat } = shown;
  const { checkOf } = useArtChecks();
  const findings = useMemo(
    () => paperFindings(layout, selection, { garment, offered, flat }, type, (sha256) => checkOf(sha256).facts),
    [layout, selection, garment, offered, flat, type, checkOf],
  );
  const overlaps = useMemo(
    () => paperOverlaps(layout, selection, { offered }, type),
    [layout, selection, offered, type],
  );
  const t = useTranslations('table.fit');
  const said = [
    ...findings.map((finding) => {
      const what = finding.of === 'fit' ? `${finding.finding.kind} ${finding.finding.line}` : finding.of;
      const { printId, name, at, stops } = finding;
      return { key: `${printId} ${what}`, printId, name, at, stops, words: wordsOf(finding) };
    }),
    ...overlaps.map(({ printId, name, otherName, at, um }) => {
      const words = t('overlaps', { print: otherName, length: formatLength(um, unit) });
      return { key: `${printId} over ${otherName}`, printId, name, at, stops: false, words };
    }),
  ];
  return said.map(({ key, printId, name, words, stops, ...finding }) => {
    const at = besideHandles(
      pxAt(viewport, finding.at),
      handles.map((handle) => pxAt(viewport, handle)),
    );
    return (
      <button
        key={key}
        type="button"
        data-reading
        className={classNames(styles.mark, stops && styles.stops, at.x + WORDS_PX > freeToPx && styles.toLeft)}
        style={{ transform: `translate(${at.x}px, ${at.y}px)` }}
        aria-label={`${name}: ${words}`}
        onClick={() => change((before) => withSelection(before, (prints, now) => selectPrint(prints, now, printId)))}
      >
        <span aria-hidden="true" className={styles.sign}>
          {stops ? '■' : '△'}
        </span>
        <span aria-hidden="true" className={styles.words}>
          <b>{name}</b>
          {words}
        </span>
      </button>
    );
  });
});

/** A mark this near a corner would lie over the handle there, CSS pixels. */
const HANDLE_PX = 24;

/** Where a mark goes: moved towards the middle of the print in hand when it would cover one of its corners. */
function besideHandles(at: Point, handles: readonly Point[]): Point {
  const near = handles.find((handle) => distance(handle, at) < HANDLE_PX);
  if (!near) return at;
  const middle = {
    x: handles.reduce((sum, { x }) => sum + x, 0) / handles.length,
    y: handles.reduce((sum, { y }) => sum + y, 0) / handles.length,
  };
  const away = Math.max(1, distance(middle, near));
  return { x: near.x + ((middle.x - near.x) / away) * HANDLE_PX, y: near.y + ((middle.y - near.y) / away) * HANDLE_PX };
}

/** Puts a finding into the words that its slip has for it. */
function useFindingWords(unit: LengthUnit): (finding: PaperFinding) => string {
  const said = useTranslations('table.fit');
  const slips = useTranslations('table.slips');
  return (found) => {
    if (found.of === 'art') {
      const { sharpUm, fairUm } = sharpnessLimits(found.inkWidthPx);
      const now = slips('now', { width: formatLength(found.widthUm, unit), sharpness: found.sharpness });
      return `${now} ${slips('sharpness', { sharp: formatLimit(sharpUm, unit), fair: formatLimit(fairUm, unit) })}`;
    }
    const { kind, line, um } = found.finding;
    const isNothing = formatLengthValue(um, unit) === '0';
    const length = isNothing
      ? said('lessThan', { length: formatLength(FINEST_UM[unit], unit) })
      : formatLength(um, unit);
    return said(`kind.${kind}`, { line: said('line', { line: line ?? 'none' }), length });
  };
}
