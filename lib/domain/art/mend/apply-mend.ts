import { oneColour } from '../check/ink-colours';
import { asWords } from '../check/pixel-classes';
import { tallyPixels } from '../check/tally';
import { clearSpecks } from './clear-specks';
import { crop, trim } from './crop';
import { dots } from './dots';
import { erase } from './erase';
import { hardenEdge } from './harden-edge';
import { knockOut } from './knock-out';
import { inkBoxOf, type MendPicture, rgbOfHex } from './mend-picture';
import type { MendStep } from './recipe';
import { recolour } from './recolour';
import { thicken } from './thicken';
import { turn } from './turn';

/** A mend that is worked out from the pixels alone; redrawing needs a tracer besides. */
export type PixelMendStep = Exclude<MendStep, { mend: 'redraw' }>;

/** Why a step cannot be done: it would leave nothing that prints; ink of several colours cannot grow into one another. */
export type MendRefusal = 'nothingLeft' | 'manyColours';

export type Mended =
  | { readonly ok: true; readonly picture: MendPicture }
  | { readonly ok: false; readonly reason: MendRefusal };

/** The picture after one step. The picture it is given stays as it is; the same picture and step give the same pixels. */
export function applyMend(picture: MendPicture, step: PixelMendStep): Mended {
  if (step.mend === 'thicken') return thickened(picture, step.byPx);
  const mended = mendedPixels(picture, step);
  return mended && inkBoxOf(mended) ? { ok: true, picture: mended } : { ok: false, reason: 'nothingLeft' };
}

function mendedPixels(picture: MendPicture, step: Exclude<PixelMendStep, { mend: 'thicken' }>): MendPicture | null {
  switch (step.mend) {
    case 'crop':
      return crop(picture, step.box);
    case 'erase':
      return erase(picture, step.boxes);
    case 'trim':
      return trim(picture);
    case 'knockOut':
      return knockOut(picture, step);
    case 'clearSpecks':
      return clearSpecks(picture, step.smallerThanPx);
    case 'hardenEdge':
      return hardenEdge(picture, step.alpha);
    case 'recolour':
      return recolour(picture, step.hex);
    case 'dots':
      return dots(picture, step.cellPx, step.turnCentideg);
    case 'turn':
      return turn(picture, step.quarters);
  }
}

function thickened(picture: MendPicture, byPx: number): Mended {
  const box = inkBoxOf(picture);
  if (!box) return { ok: false, reason: 'nothingLeft' };
  const hex = oneColour(tallyPixels(asWords(picture), box, null));
  if (hex === null) return { ok: false, reason: 'manyColours' };
  return { ok: true, picture: thicken(picture, byPx, rgbOfHex(hex)) };
}
