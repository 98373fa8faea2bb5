import { INK_ALPHA } from '../ink';
import { flood } from './flood';
import { BACKING, CLEAR, smoothKnockedOutEdge } from './knocked-out-edge';
import { copyOf, type MendPicture, rgbOfHex, wholePixels } from './mend-picture';
import { nearColour } from './near-colour';

/** What is to be made clear: one colour, how far from it a pixel may be (ΔE00), and from where. */
export type KnockOut = {
  readonly hex: string;
  readonly tolerance: number;
  /** Everything of the colour that is joined to the picture's edges. */
  readonly fromEdges: boolean;
  /** And what is joined to each of these places, px of the picture. */
  readonly enclosed: readonly { readonly x: number; readonly y: number }[];
};

/** A place that was pointed at may miss an area by this much, px. */
const POINTING_REACH_PX = 2;

/**
 * The picture with its backing clear, and with smooth edges: a pixel that was half ink and half backing becomes half-clear
 * ink, so that no rim of the backing's colour is left around what stays. Laid over the backing again the result looks as the
 * picture did, to the tolerance.
 */
export function knockOut(picture: MendPicture, { hex, tolerance, fromEdges, enclosed }: KnockOut): MendPicture {
  const { rgba, widthPx, heightPx } = picture;
  const isNear = nearColour(hex, tolerance);
  const fates = new Uint8Array(widthPx * heightPx);
  const isBacking = (index: number) => {
    const at = index * 4;
    return isNear(rgba[at] ?? 0, rgba[at + 1] ?? 0, rgba[at + 2] ?? 0);
  };
  const mayPass = (index: number) => (rgba[index * 4 + 3] ?? 0) < INK_ALPHA || isBacking(index);
  const pixels = { marks: fates, widthPx, mayPass };
  if (fromEdges) flood(pixels, rimOf(picture), BACKING);
  for (const place of enclosed) {
    const seed = nearest(place, picture, mayPass);
    if (seed !== null) flood(pixels, [seed], BACKING);
  }

  const knockedOut = copyOf(picture);
  const onto = wholePixels(knockedOut);
  for (let index = 0; index < fates.length; index += 1) {
    if (fates[index] !== BACKING) continue;
    if ((rgba[index * 4 + 3] ?? 0) < INK_ALPHA) fates[index] = CLEAR;
    onto[index] = 0;
  }
  smoothKnockedOutEdge(picture, knockedOut, fates, { backing: rgbOfHex(hex), isNear: isBacking });
  return knockedOut;
}

function* rimOf({ widthPx, heightPx }: MendPicture): Generator<number> {
  for (let x = 0; x < widthPx; x += 1) {
    yield x;
    yield (heightPx - 1) * widthPx + x;
  }
  for (let y = 0; y < heightPx; y += 1) {
    yield y * widthPx;
    yield (y + 1) * widthPx - 1;
  }
}

/** The pixel pointed at, or the nearest one that can be knocked out; null where none is near. */
function nearest(
  place: { readonly x: number; readonly y: number },
  { widthPx, heightPx }: MendPicture,
  mayPass: (index: number) => boolean,
): number | null {
  for (let reach = 0; reach <= POINTING_REACH_PX; reach += 1) {
    for (let y = place.y - reach; y <= place.y + reach; y += 1) {
      for (let x = place.x - reach; x <= place.x + reach; x += 1) {
        const isOnPicture = x >= 0 && y >= 0 && x < widthPx && y < heightPx;
        if (isOnPicture && mayPass(y * widthPx + x)) return y * widthPx + x;
      }
    }
  }
  return null;
}
