import { INK_ALPHA } from '../ink';
import type { MendPicture } from './mend-picture';
import { channelDistance, inkShare, type Rgb, unMixed } from './un-mix';

/** What became of a pixel: it stays, it was backing, or it was clear already and only passed through. */
export const KEPT = 0;
export const BACKING = 1;
export const CLEAR = 2;
/** A pixel that stays and is 1, 2, … steps from the backing has `NEXT_TO_BACKING`, one more, …. */
const NEXT_TO_BACKING = 3;

/** A smooth edge, and one that was softened by saving as JPEG, is this wide at most, px. */
const EDGE_PX = 3;

/** Ink has its full colour where the next pixel inwards is not this much further from the backing, in channels or share. */
const PLATEAU = 4;
const PLATEAU_SHARE = 0.05;

/** From this share on a pixel is full ink: what is missing is the noise of the file. */
const FULL_SHARE = 0.97;

/** Ink left in a pixel that was near enough to the backing to be taken for it is brought back from this share on. */
const LEAST_SHARE = 0.04;

/**
 * Makes smooth the edges that a knocked-out backing leaves. `fates` says of each pixel of `picture` what became of it,
 * `isNear` whether it has the backing's colour; the result is written into `knockedOut`.
 */
export function smoothKnockedOutEdge(
  picture: MendPicture,
  knockedOut: MendPicture,
  fates: Uint8Array,
  { backing, isNear }: { readonly backing: Rgb; readonly isNear: (index: number) => boolean },
): void {
  const around = neighbours(picture);
  const layers = edgeLayers(fates, picture.widthPx, around);
  const seen = { picture, fates, around, backing };
  const shares = new Map<number, number>();
  for (const [depth, layer] of layers.slice(0, EDGE_PX).entries()) {
    for (const index of layer) {
      // The backing's colour where the backing did not reach is drawn there: the white line inside a dark outline.
      if (isNear(index) || !isMixedOutwards(seen, index, depth, shares)) continue;
      const share = shareOfEdgePixel(seen, index, depth);
      shares.set(index, share);
      if (share < FULL_SHARE) setUnMixed(seen, knockedOut, index, share);
    }
  }
  for (const index of hiddenRim(seen, layers[0] ?? [])) {
    const share = hiddenShare(seen, index, shares);
    if (share >= LEAST_SHARE) setUnMixed(seen, knockedOut, index, share);
  }
}

/** Whether an edge goes on into this pixel: it touches the backing, or a mixed pixel one step further out. */
function isMixedOutwards(
  { around, fates }: Seen,
  index: number,
  depth: number,
  shares: ReadonlyMap<number, number>,
): boolean {
  if (depth === 0) return true;
  let found = false;
  around(index, (neighbour) => {
    const isOutwards = fates[neighbour] === NEXT_TO_BACKING + depth - 1;
    found ||= isOutwards && (shares.get(neighbour) ?? 1) < FULL_SHARE;
  });
  return found;
}

type Seen = {
  readonly picture: MendPicture;
  readonly fates: Uint8Array;
  readonly around: Around;
  readonly backing: Rgb;
};

type Around = (index: number, visit: (neighbour: number) => void) => void;

/** Visits the up to eight pixels around one. */
function neighbours({ widthPx, heightPx }: MendPicture): Around {
  return (index, visit) => {
    const x = index % widthPx;
    const y = (index - x) / widthPx;
    for (let row = Math.max(0, y - 1); row <= Math.min(heightPx - 1, y + 1); row += 1) {
      for (let column = Math.max(0, x - 1); column <= Math.min(widthPx - 1, x + 1); column += 1) {
        if (row !== y || column !== x) visit(row * widthPx + column);
      }
    }
  };
}

/** The pixels that stay, by how many steps they are from the backing; one layer more than an edge is wide. */
function edgeLayers(fates: Uint8Array, widthPx: number, around: Around): number[][] {
  const layers: number[][] = [];
  let before: number[] = [];
  for (let depth = 0; depth <= EDGE_PX; depth += 1) {
    const layer: number[] = [];
    const take = (index: number) => {
      if (fates[index] !== KEPT) return;
      fates[index] = NEXT_TO_BACKING + depth;
      layer.push(index);
    };
    if (depth > 0) for (const index of before) around(index, take);
    else {
      for (let index = 0; index < fates.length; index += 1) {
        if (fates[index] === BACKING && !isAmidBacking(fates, widthPx, index)) around(index, take);
      }
    }
    layers.push(layer);
    before = layer;
  }
  return layers;
}

/** Whether the pixels around are backing as well; most of a picture is settled by this. */
function isAmidBacking(fates: Uint8Array, widthPx: number, index: number): boolean {
  for (let from = index - widthPx - 1; from <= index + widthPx - 1; from += widthPx) {
    if (fates[from] !== BACKING || fates[from + 1] !== BACKING || fates[from + 2] !== BACKING) return false;
  }
  return true;
}

function colourAt({ rgba }: MendPicture, index: number): Rgb {
  const at = index * 4;
  return [rgba[at] ?? 0, rgba[at + 1] ?? 0, rgba[at + 2] ?? 0];
}

function shareOfEdgePixel(seen: Seen, index: number, depth: number): number {
  const { picture, backing } = seen;
  return inkShare(colourAt(picture, index), inkBehind(seen, index, depth), backing);
}

/**
 * The colour of the ink an edge pixel belongs to: going inwards, always to the neighbour furthest from the backing, until
 * the colour no longer moves away from it. A thin line has no inside: there the strongest of its neighbours is taken.
 */
function inkBehind({ picture, fates, around, backing }: Seen, start: number, startDepth: number): Rgb {
  let [index, distance] = [start, channelDistance(colourAt(picture, start), backing)];
  for (let depth = startDepth; depth <= EDGE_PX; depth += 1) {
    let [deepest, furthest] = [index, distance];
    const isLast = depth === EDGE_PX;
    around(index, (neighbour) => {
      const fate = fates[neighbour] ?? KEPT;
      const isInwards = isLast ? fate === KEPT : fate > NEXT_TO_BACKING + depth || fate === KEPT;
      if (!isInwards || (picture.rgba[neighbour * 4 + 3] ?? 0) < INK_ALPHA) return;
      const away = channelDistance(colourAt(picture, neighbour), backing);
      if (away > furthest) [deepest, furthest] = [neighbour, away];
    });
    if (furthest - distance <= Math.max(PLATEAU, PLATEAU_SHARE * distance)) break;
    [index, distance] = [deepest, furthest];
  }
  if (index !== start) return colourAt(picture, index);
  // Nothing stronger lies further in. Along a thin line the next pixel may hold more of its colour.
  let [strongest, furthest] = [start, distance];
  if (hasInside({ picture, fates, around, backing }, start)) return colourAt(picture, start);
  around(start, (neighbour) => {
    if ((fates[neighbour] ?? 0) < NEXT_TO_BACKING) return;
    const away = channelDistance(colourAt(picture, neighbour), backing);
    if (away > furthest) [strongest, furthest] = [neighbour, away];
  });
  return colourAt(picture, strongest);
}

/** Whether a pixel further from the backing touches this one. */
function hasInside({ fates, around }: Seen, index: number): boolean {
  const own = fates[index] ?? KEPT;
  let found = false;
  around(index, (neighbour) => {
    const fate = fates[neighbour] ?? KEPT;
    found ||= fate === KEPT || fate > own;
  });
  return found;
}

/** Pixels that were taken for backing and touch what stays. */
function hiddenRim({ fates, around }: Seen, edge: readonly number[]): Set<number> {
  const rim = new Set<number>();
  for (const index of edge) {
    around(index, (neighbour) => {
      if (fates[neighbour] === BACKING) rim.add(neighbour);
    });
  }
  return rim;
}

/** The share of ink in a pixel taken for backing: of the strongest ink it touches, and never more than that has itself. */
function hiddenShare(seen: Seen, index: number, shares: ReadonlyMap<number, number>): number {
  const { picture, around, backing } = seen;
  const colour = colourAt(picture, index);
  let found = 0;
  around(index, (neighbour) => {
    const most = shares.get(neighbour);
    if (most === undefined) return;
    const share = inkShare(colour, inkBehind(seen, neighbour, 0), backing);
    found = Math.max(found, Math.min(share, most));
  });
  return found;
}

function setUnMixed({ picture, backing }: Seen, { rgba }: MendPicture, index: number, share: number): void {
  const { alpha, ink } = unMixed(colourAt(picture, index), share, backing);
  const at = index * 4;
  const had = picture.rgba[at + 3] ?? 0;
  const alphaLeft = Math.round((alpha * had) / 255);
  if (alphaLeft === 0) {
    rgba.fill(0, at, at + 4);
    return;
  }
  rgba[at] = ink[0];
  rgba[at + 1] = ink[1];
  rgba[at + 2] = ink[2];
  rgba[at + 3] = alphaLeft;
}
