import { type FlatLineName, type FrozenFlat, PRESSABLE_LINES } from '../garment/flat';
import { type Box, boxAround } from '../geometry/box';
import type { Polyline } from '../geometry/clearance';
import { flattened } from '../geometry/path';
import { pathFromData } from '../geometry/path-data';

/** A line that a press cannot lie flat across, as straight pieces, with the box around them; mm on the flat. */
export type LineChain = { readonly line: FlatLineName; readonly chain: Polyline; readonly box: Box };

/** A flat as straight pieces: its edge as one ring, and every run of its lines that a press cannot cross. */
export type FlatChains = { readonly outline: Polyline; readonly lines: readonly LineChain[] };

/** Pieces of a garment-sized curve cut into so many stray from it by less than 0.1 mm. */
const CUTS = 24;

const chainsByFlat = new WeakMap<FrozenFlat, FlatChains>();

/** The straight pieces of a flat. Flats do not change: each is cut once. */
export function chainsOf(flat: FrozenFlat): FlatChains {
  const known = chainsByFlat.get(flat);
  if (known) return known;
  const chains: FlatChains = {
    outline: straightened(flat.outline)[0] ?? [],
    lines: flat.lines
      .filter(({ line }) => !PRESSABLE_LINES.has(line))
      .flatMap(({ line, d }) => straightened(d).map((chain) => ({ line, chain, box: boxAround(chain) }))),
  };
  chainsByFlat.set(flat, chains);
  return chains;
}

function straightened(d: string): Polyline[] {
  return flattened(pathFromData(d), CUTS).filter(({ length }) => length > 1);
}
