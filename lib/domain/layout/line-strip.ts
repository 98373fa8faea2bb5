import type { Box } from '../geometry/box';
import type { PictureFrame } from './picture-frame';

/** Width of one garment's place on the line, px: shown at half of it, sharp on a phone with two pixels to the CSS pixel. */
const PLACE_WIDTH_PX = 208;

/** A long garment is drawn smaller in its place, so that the line stays one to be looked along, px. */
const TALLEST_PX = 260;

/** Room above the garments for the string and its pegs, px. */
export const HANG_PX = 28;

/** As many garments as one picture holds: a WebP is at most 16 383 px wide (RFC 9649). */
const MOST_ON_A_LINE = 60;

/** A picture of one side of a garment in all its sizes side by side, in places of equal width, at one scale. */
export type LineStrip = { readonly placeWidthPx: number; readonly widthPx: number; readonly heightPx: number };

/** How large the line is for so many sizes of a garment with this picture frame; null when they are too many. */
export function lineStrip(
  { widthPx, heightPx }: Pick<PictureFrame, 'widthPx' | 'heightPx'>,
  sizes: number,
): LineStrip | null {
  if (sizes > MOST_ON_A_LINE) return null;
  const placeHeightPx = Math.min(TALLEST_PX, Math.round((PLACE_WIDTH_PX * heightPx) / widthPx));
  return { placeWidthPx: PLACE_WIDTH_PX, widthPx: sizes * PLACE_WIDTH_PX, heightPx: placeHeightPx + HANG_PX };
}

/** The one scale of a line, mm of the garments to a px. */
export function mmPerPxOnLine({ placeWidthPx, heightPx }: LineStrip, { box }: Pick<PictureFrame, 'box'>): number {
  return Math.max(box.width / placeWidthPx, box.height / (heightPx - HANG_PX));
}

/** What of a garment's flat is seen in its place, mm: in the middle of it, its highest point just under the string. */
export function placeOnLine(strip: LineStrip, frame: Pick<PictureFrame, 'box'>, garment: Box): Box {
  const mmPerPx = mmPerPxOnLine(strip, frame);
  const width = strip.placeWidthPx * mmPerPx;
  return {
    x: garment.x + garment.width / 2 - width / 2,
    y: garment.y - HANG_PX * mmPerPx,
    width,
    height: strip.heightPx * mmPerPx,
  };
}
