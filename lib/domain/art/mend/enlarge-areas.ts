import { type FlatAreas, NO_INK } from './flat-areas';

/**
 * Which colour each pixel of the picture at another size has, by its number, or `NO_INK`: the one that covers most where the
 * coverage of the three by three pixels around is weighed by nearness (quadratic B-spline). An edge comes to lie where the
 * half-covered pixels say, to a part of a pixel.
 */
export function enlargedAreas(areas: FlatAreas, width: number, height: number): Uint8Array {
  const labels = new Uint8Array(width * height);
  const across = Array.from({ length: width }, (_, x) => nearThree((x + 0.5) * (areas.widthPx / width), areas.widthPx));
  const cover = new Float64Array(256);
  for (let y = 0; y < height; y += 1) {
    const down = nearThree((y + 0.5) * (areas.heightPx / height), areas.heightPx);
    for (const [x, column] of across.entries()) labels[y * width + x] = mostCovering(areas, cover, column, down);
  }
  return labels;
}

/** The three pixels of a row or column a point is weighed from, and their weights. */
type NearThree = {
  readonly places: readonly [number, number, number];
  readonly weights: readonly [number, number, number];
};

function nearThree(point: number, length: number): NearThree {
  const middle = Math.min(length - 1, Math.floor(point));
  const off = point - middle - 0.5;
  return {
    places: [Math.max(0, middle - 1), middle, Math.min(length - 1, middle + 1)],
    weights: [(0.5 - off) ** 2 / 2, 0.75 - off ** 2, (0.5 + off) ** 2 / 2],
  };
}

function mostCovering(areas: FlatAreas, cover: Float64Array, across: NearThree, down: NearThree): number {
  const middle = down.places[1] * areas.widthPx + across.places[1];
  const own = areas.first[middle] ?? NO_INK;
  if (isAllOf(areas, across, down, own)) return own;
  cover.fill(0);
  for (const [row, y] of down.places.entries()) {
    for (const [column, x] of across.places.entries()) {
      addCover(areas, cover, y * areas.widthPx + x, (down.weights[row] ?? 0) * (across.weights[column] ?? 0));
    }
  }
  return most(cover);
}

function addCover(areas: FlatAreas, cover: Float64Array, at: number, weight: number): void {
  const ink = ((areas.ink[at] ?? 0) / 255) * weight;
  const share = (areas.firstShare[at] ?? 255) / 255;
  const [first, second] = [areas.first[at] ?? NO_INK, areas.second[at] ?? NO_INK];
  cover[NO_INK] = (cover[NO_INK] ?? 0) + weight - ink;
  cover[first] = (cover[first] ?? 0) + ink * share;
  if (share < 1) cover[second] = (cover[second] ?? 0) + ink * (1 - share);
}

/** Ink against no ink first, and only then which ink: two inks must not lose to the room beside them. */
function most(cover: Float64Array): number {
  if ((cover[NO_INK] ?? 0) >= 0.5) return NO_INK;
  let best = 0;
  for (let label = 1; label < NO_INK; label += 1) if ((cover[label] ?? 0) > (cover[best] ?? 0)) best = label;
  return best;
}

/** Whether all pixels around are wholly of one kind: solid ink of one colour, or none. */
function isAllOf(areas: FlatAreas, across: NearThree, down: NearThree, label: number): boolean {
  for (const y of down.places) {
    for (const x of across.places) {
      const at = y * areas.widthPx + x;
      if (areas.first[at] !== label) return false;
      if (label !== NO_INK && (areas.ink[at] !== 255 || areas.firstShare[at] !== 255)) return false;
    }
  }
  return true;
}
