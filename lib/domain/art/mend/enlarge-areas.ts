import { type FlatAreas, NO_INK } from './flat-areas';

/**
 * Which colour each pixel of a picture `scale` times as large has, by its number, or `NO_INK`: the one that covers most where
 * the coverage of the four pixels around is weighed by nearness. An edge comes to lie where the half-covered pixels say, to a
 * part of a pixel. Rows `fromRow` to before `toRow` of the larger picture.
 */
export function enlargedAreas(areas: FlatAreas, scale: number, fromRow: number, toRow: number): Uint8Array {
  const { widthPx, heightPx } = areas;
  const across = widthPx * scale;
  const labels = new Uint8Array(across * (toRow - fromRow));
  const cover = new Float64Array(256);
  for (let y = fromRow; y < toRow; y += 1) {
    const v = (y + 0.5) / scale - 0.5;
    const top = Math.floor(v);
    for (let x = 0; x < across; x += 1) {
      const u = (x + 0.5) / scale - 0.5;
      const left = Math.floor(u);
      labels[(y - fromRow) * across + x] = mostCovering(areas, cover, {
        left: Math.max(0, left),
        right: Math.min(widthPx - 1, left + 1),
        top: Math.max(0, top),
        bottom: Math.min(heightPx - 1, top + 1),
        rightShare: u - left,
        bottomShare: v - top,
      });
    }
  }
  return labels;
}

type Around = {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly rightShare: number;
  readonly bottomShare: number;
};

function mostCovering(areas: FlatAreas, cover: Float64Array, around: Around): number {
  const { left, right, top, bottom, rightShare, bottomShare } = around;
  const row = top * areas.widthPx;
  const below = bottom * areas.widthPx;
  const corners = [row + left, row + right, below + left, below + right];
  const first = areas.first[corners[0] ?? 0] ?? NO_INK;
  if (corners.every((at) => isOnly(areas, at, first))) return first;
  const weights = [
    (1 - rightShare) * (1 - bottomShare),
    rightShare * (1 - bottomShare),
    (1 - rightShare) * bottomShare,
    rightShare * bottomShare,
  ];
  const seen = [NO_INK];
  cover[NO_INK] = 0;
  const add = (label: number, share: number) => {
    if (!seen.includes(label)) {
      seen.push(label);
      cover[label] = 0;
    }
    cover[label] = (cover[label] ?? 0) + share;
  };
  for (const [corner, at] of corners.entries()) {
    const weight = weights[corner] ?? 0;
    const ink = (areas.ink[at] ?? 0) / 255;
    const share = (areas.firstShare[at] ?? 255) / 255;
    add(NO_INK, weight * (1 - ink));
    add(areas.first[at] ?? NO_INK, weight * ink * share);
    if (share < 1) add(areas.second[at] ?? NO_INK, weight * ink * (1 - share));
  }
  // Ink against no ink first, and only then which ink: between them two inks must not lose to the room beside them.
  if ((cover[NO_INK] ?? 0) >= 0.5) return NO_INK;
  let best = NO_INK;
  for (const label of seen) {
    if (label !== NO_INK && (best === NO_INK || (cover[label] ?? 0) > (cover[best] ?? 0))) best = label;
  }
  return best;
}

/** Whether a pixel is wholly of one kind: solid ink of one colour, or none. */
function isOnly(areas: FlatAreas, at: number, label: number): boolean {
  if (areas.first[at] !== label) return false;
  return label === NO_INK || (areas.ink[at] === 255 && areas.firstShare[at] === 255);
}
