import type { Box } from '../geometry/box';
import { commonBox, type Scene } from './scene';

/** Width of a garment's pictures, px: sharp on a phone with two pixels to the CSS pixel. */
export const PICTURE_WIDTH_PX = 1100;

/** Room left around the widest garment in a picture, mm. */
const PICTURE_MARGIN_MM = 24;

/** What a garment's pictures show: one box for all its sizes and sides, so that all are at one scale. */
export type PictureFrame = { readonly box: Box; readonly widthPx: number; readonly heightPx: number };

/** The frame that all pictures of one garment share. */
export function pictureFrame(scenes: readonly Pick<Scene, 'box'>[]): PictureFrame {
  const box = commonBox(scenes, PICTURE_MARGIN_MM);
  return { box, widthPx: PICTURE_WIDTH_PX, heightPx: Math.round((PICTURE_WIDTH_PX * box.height) / box.width) };
}
