/**
 * Turns weights into squared Euclidean distances, px: of every pixel the least of (distance to another pixel)² + that pixel's
 * weight, in place. Infinity is no pixel at all. Exact: the lower envelope of parabolas, along columns and then along rows.
 * Source: P. F. Felzenszwalb and D. P. Huttenlocher, Theory of Computing 8 (2012), algorithm 1. Distances beyond `reachPx`
 * may come out as Infinity.
 */
export function squaredDistances(weights: Float32Array, widthPx: number, heightPx: number, reachPx: number): void {
  const longest = Math.max(widthPx, heightPx);
  const line = new Float64Array(longest);
  const envelope = makeEnvelope(longest, reachPx);
  for (let x = 0; x < widthPx; x += 1) {
    for (let y = 0; y < heightPx; y += 1) line[y] = weights[y * widthPx + x] ?? 0;
    if (!envelope(line, heightPx)) continue;
    for (let y = 0; y < heightPx; y += 1) weights[y * widthPx + x] = line[y] ?? 0;
  }
  for (let y = 0; y < heightPx; y += 1) {
    const row = weights.subarray(y * widthPx, (y + 1) * widthPx);
    line.set(row);
    if (envelope(line, widthPx)) row.set(line.subarray(0, widthPx));
  }
}

/** Works a line out in place; false where there is nothing on it. */
function makeEnvelope(longest: number, reachPx: number): (line: Float64Array, length: number) => boolean {
  const places = new Int32Array(longest);
  const heights = new Float64Array(longest);
  /** Where each parabola begins to be the lowest. */
  const starts = new Float64Array(longest + 1);

  /** Where a parabola crosses the one before it on the envelope. */
  function crossing(place: number, height: number, before: number): number {
    const at = places[before] ?? 0;
    return (height + place * place - ((heights[before] ?? 0) + at * at)) / (2 * (place - at));
  }

  function build(line: Float64Array, length: number): number {
    let count = 0;
    for (let place = 0; place < length; place += 1) {
      const height = line[place] ?? 0;
      if (height === Number.POSITIVE_INFINITY) continue;
      let start = Number.NEGATIVE_INFINITY;
      while (count > 0) {
        start = crossing(place, height, count - 1);
        if (count === 1 || start > (starts[count - 1] ?? 0)) break;
        count -= 1;
      }
      places[count] = place;
      heights[count] = height;
      starts[count] = start;
      count += 1;
    }
    starts[count] = Number.POSITIVE_INFINITY;
    return count;
  }

  return (line, length) => {
    if (build(line, length) === 0) return false;
    let at = 0;
    for (let place = 0; place < length; place += 1) {
      while ((starts[at + 1] ?? 0) < place) at += 1;
      const away = place - (places[at] ?? 0);
      line[place] = Math.abs(away) > reachPx ? Number.POSITIVE_INFINITY : away * away + (heights[at] ?? 0);
    }
    return true;
  };
}
