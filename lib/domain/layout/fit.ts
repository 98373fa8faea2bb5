import { type FlatLineName, type FrozenFlat, PRESSABLE_LINES } from '../garment/flat';
import { type Clearance, chainsMeet, clearanceBetween, isInside, type Polyline } from '../geometry/clearance';
import { flattened } from '../geometry/path';
import { pathFromData } from '../geometry/path-data';
import type { Point } from '../geometry/point';
import { type Micrometres, umFromInches, umFromMm } from '../measure/length';
import type { PlacedPrint } from './placement';

/** What can be wrong with where a print lies on one size. The first two cannot be pressed as they are. */
export type FitKind = 'offGarment' | 'crossesSeam' | 'widerThanArmholes' | 'nearSeam' | 'withinCut' | 'beyondPlaten';

/**
 * One finding on one size. `um` is how near the ink comes to the line (`nearSeam`, `withinCut`), how far it reaches
 * beyond (`offGarment`, `widerThanArmholes`, `beyondPlaten`), or 0 (`crossesSeam`). `at` is where, in mm on the flat.
 */
export type FitFinding = {
  readonly kind: FitKind;
  readonly line: FlatLineName | null;
  readonly um: Micrometres;
  readonly neededUm: Micrometres;
  readonly at: Point;
};

/** Largest print a common press takes in one go, 16 × 20 in (common practice, no source). */
export const USUAL_PLATEN_UM = { widthUm: umFromInches(16), heightUm: umFromInches(20) } as const;

/** How near ink may come to a line, where nothing else is said: half an inch (common practice, no source). */
const USUAL_GAP_UM = umFromInches(1 / 2);

/** Lines that ask for more room than usual (common practice, no source). */
const GAP_UM: Readonly<Partial<Record<FlatLineName, Micrometres>>> = {
  collarSeam: umFromInches(3 / 4),
  armhole: umFromInches(1),
  sideSeam: umFromInches(1),
  hem: umFromInches(1),
};

/** Which way a garment's cutting varies at a line; lines a drop is taken from do not count, the tape starts there. */
const CUT_DIRECTION: Readonly<Partial<Record<FlatLineName, 'across' | 'long'>>> = {
  armhole: 'across',
  sideSeam: 'across',
  hem: 'long',
};

type CutTolerance = { readonly acrossUm: Micrometres; readonly longUm: Micrometres };

/** How a placed print fits one flat: every finding, worst kind first; none when it can be pressed as it lies. */
export function fitOnSize(
  placed: Pick<PlacedPrint, 'inkOutline' | 'inkBox'>,
  flat: FrozenFlat,
  cut: CutTolerance,
  platen: { widthUm: Micrometres; heightUm: Micrometres } = USUAL_PLATEN_UM,
): FitFinding[] {
  const ring = closedRing(placed.inkOutline);
  const chains = chainsOf(flat);
  return [
    ...offGarment(ring, chains.outline),
    ...lineFindings(ring, chains, cut),
    ...beyondPlaten(placed.inkBox, platen),
  ];
}

function offGarment(ring: Polyline, outline: Polyline): FitFinding[] {
  const outside = ring.filter((point) => !isInside(point, outline));
  if (outside.length === 0) return [];
  const reaches = outside.map((point) => ({ point, mm: clearanceBetween([point, point], outline).distance }));
  const farthest = reaches.reduce((far, each) => (each.mm > far.mm ? each : far));
  return [{ kind: 'offGarment', line: null, um: umFromMm(farthest.mm), neededUm: 0, at: farthest.point }];
}

function lineFindings(ring: Polyline, chains: Chains, cut: CutTolerance): FitFinding[] {
  const crossed = chains.lines.filter(({ chain }) => chainsMeet(ring, chain));
  const armholes = crossed.filter(({ line }) => line === 'armhole');
  const crossings = crossed
    .filter(({ line }) => armholes.length < 2 || line !== 'armhole')
    .map(
      ({ line, chain }): FitFinding => ({
        kind: 'crossesSeam',
        line,
        um: 0,
        neededUm: gapUm(line),
        at: clearanceBetween(ring, chain).from,
      }),
    );
  const near = chains.lines.flatMap(({ line, chain }): FitFinding[] => {
    if (crossed.some((each) => each.chain === chain)) return [];
    return nearFinding(clearanceBetween(ring, chain), line, cut);
  });
  return [...crossings, ...(armholes.length >= 2 ? [widerThanArmholes(ring, armholes)] : []), ...near];
}

function nearFinding({ distance, from }: Clearance, line: FlatLineName, cut: CutTolerance): FitFinding[] {
  const um = umFromMm(distance);
  const neededUm = gapUm(line);
  if (um < neededUm) return [{ kind: 'nearSeam', line, um, neededUm, at: from }];
  const direction = CUT_DIRECTION[line];
  const variesUm = direction === 'across' ? cut.acrossUm : direction === 'long' ? cut.longUm : 0;
  return um < variesUm ? [{ kind: 'withinCut', line, um, neededUm: variesUm, at: from }] : [];
}

function widerThanArmholes(ring: Polyline, armholes: readonly LineChain[]): FitFinding {
  const inner = Math.min(...armholes.flatMap(({ chain }) => chain.map(({ x }) => Math.abs(x))));
  const widest = ring.reduce((far, point) => (Math.abs(point.x) > Math.abs(far.x) ? point : far));
  return {
    kind: 'widerThanArmholes',
    line: 'armhole',
    um: umFromMm(Math.abs(widest.x) - inner),
    neededUm: 0,
    at: widest,
  };
}

function beyondPlaten(
  { x, y, width, height }: PlacedPrint['inkBox'],
  platen: { widthUm: number; heightUm: number },
): FitFinding[] {
  const um = Math.max(umFromMm(width) - platen.widthUm, umFromMm(height) - platen.heightUm);
  return um > 0 ? [{ kind: 'beyondPlaten', line: null, um, neededUm: 0, at: { x, y } }] : [];
}

function gapUm(line: FlatLineName): Micrometres {
  return GAP_UM[line] ?? USUAL_GAP_UM;
}

type LineChain = { readonly line: FlatLineName; readonly chain: Polyline };
type Chains = { readonly outline: Polyline; readonly lines: readonly LineChain[] };

const chainsByFlat = new WeakMap<FrozenFlat, Chains>();

/** Flats do not change: each is cut into straight pieces once. */
function chainsOf(flat: FrozenFlat): Chains {
  const known = chainsByFlat.get(flat);
  if (known) return known;
  const chains: Chains = {
    outline: straightened(flat.outline)[0] ?? [],
    lines: flat.lines
      .filter(({ line }) => !PRESSABLE_LINES.has(line))
      .flatMap(({ line, d }) => straightened(d).map((chain) => ({ line, chain }))),
  };
  chainsByFlat.set(flat, chains);
  return chains;
}

/** Pieces of a garment-sized curve cut into 24 stray from it by less than 0.1 mm. */
function straightened(d: string): Polyline[] {
  return flattened(pathFromData(d), 24);
}

function closedRing(outline: readonly Point[]): Polyline {
  const [first] = outline;
  return first ? [...outline, first] : [];
}
