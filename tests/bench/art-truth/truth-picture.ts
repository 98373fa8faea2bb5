import type { FindingCode } from '@/lib/domain/art/findings/art-finding';
import type { ClothColour } from '@/lib/domain/art/findings/vanishes';
import type { Drawing } from './drawn-in-page';

/** A picture of which it is known what is the matter with it, because it was drawn so. */
export type TruthPicture = {
  readonly family: string;
  readonly drawing: Drawing;
  /** How large a pixel is printed, µm. */
  readonly umPerPx: number;
  readonly cloths: readonly ClothColour[];
  /** What has to be found; whatever is named in neither list must not be. */
  readonly must: readonly FindingCode[];
  /** What may be found or not: the fault drawn brings it along at some sizes. */
  readonly either?: readonly FindingCode[];
  /** Known widths, px. */
  readonly strokePx?: number;
  readonly gapPx?: number;
};

/** Pixels to a printed inch, as the size of one on cloth. */
export function atPxPerInch(pxPerInch: number): number {
  return 25_400 / pxPerInch;
}
