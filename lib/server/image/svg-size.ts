import { MOST_PIXELS } from './quiet-sharp';
import type { SvgElement } from './svg-tree';

/** Where a drawing lies in its own units, and how large it is drawn. */
export type SvgSize = {
  readonly viewBox: readonly [x: number, y: number, width: number, height: number];
  readonly widthPx: number;
  readonly heightPx: number;
};

/** CSS px a unit (CSS Values 4, section 6.2): 1 in = 96 px. A size in em or % says nothing without a page round it. */
const PX_PER_UNIT: Readonly<Record<string, number>> = {
  '': 1,
  px: 1,
  in: 96,
  cm: 96 / 2.54,
  mm: 96 / 25.4,
  q: 96 / 101.6,
  pt: 96 / 72,
  pc: 16,
};

/** A drawing has no size of its own in pixels; its longer side is drawn with as many: 15 in at 300 px per inch. */
export const DRAWN_LONG_SIDE_PX = 4_500;

/** Renderers count in 16 bits; none draws a longer side. */
const LONGEST_SIDE_PX = 30_000;

/** A size where the file gives none (CSS 2, section 10.3.2). */
const NO_SIZE = [300, 150] as const;

/**
 * Takes a drawing's size from its own units at 1 px = 1/96 in. It is drawn with its longer side 4 500 px, or at 300 px per
 * inch of its own size where that is more, as far as the limit of pixels allows. Null where it has no extent.
 */
export function svgSize({ attributes }: SvgElement): SvgSize | null {
  const declared = viewBoxOf(attributes.get('viewBox'));
  const width = lengthPx(attributes.get('width'));
  const height = lengthPx(attributes.get('height'));
  const aspect = declared ? declared[2] / declared[3] : NO_SIZE[0] / NO_SIZE[1];
  const ownWidth = width ?? (height !== null ? height * aspect : (declared?.[2] ?? NO_SIZE[0]));
  const ownHeight = height ?? ownWidth / aspect;
  const isSound = [ownWidth, ownHeight].every((side) => Number.isFinite(side) && side > 0);
  if (!isSound) return null;
  return { viewBox: declared ?? [0, 0, ownWidth, ownHeight], ...drawnSize(ownWidth / 96, ownHeight / 96) };
}

/** How many pixels a drawing of a size in inches is drawn with. */
export function drawnSize(widthIn: number, heightIn: number): { widthPx: number; heightPx: number } {
  const longIn = Math.max(widthIn, heightIn);
  const wanted = Math.max(300, DRAWN_LONG_SIDE_PX / longIn);
  const most = Math.sqrt(MOST_PIXELS / (widthIn * heightIn));
  // A hair under the limit, since both sides are rounded.
  const pxPerInch = Math.min(wanted, most * 0.999, LONGEST_SIDE_PX / longIn);
  return {
    widthPx: Math.max(1, Math.round(widthIn * pxPerInch)),
    heightPx: Math.max(1, Math.round(heightIn * pxPerInch)),
  };
}

function viewBoxOf(value: string | undefined): SvgSize['viewBox'] | null {
  const [x, y, width, height] = (value ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  if (x === undefined || y === undefined || width === undefined || height === undefined) return null;
  const isSound = [x, y, width, height].every(Number.isFinite) && width > 0 && height > 0;
  return isSound ? [x, y, width, height] : null;
}

function lengthPx(value: string | undefined): number | null {
  const [, number = '', unit = ''] = /^\s*([+-]?[\d.]+(?:e[+-]?\d+)?)\s*([a-z]*)\s*$/i.exec(value ?? '') ?? [];
  const px = Number.parseFloat(number) * (PX_PER_UNIT[unit.toLowerCase()] ?? Number.NaN);
  return Number.isFinite(px) ? px : null;
}
