import { type PressLimits, USUAL_PRESS_LIMITS } from '../art/findings/press-limits';
import type { FlatLineName, FrozenFlat } from '../garment/flat';
import { boxGap, type Clearance, chainsMeet, clearanceBetween, isInside, type Polyline } from '../geometry/clearance';
import type { Point } from '../geometry/point';
import { type Micrometres, mmFromUm, umFromMm } from '../measure/length';
import { type CutTolerance, variesUm } from './fit-cut';
import { gapUm } from './fit-gaps';
import { chainsOf, type LineChain } from './flat-chains';
import { beyondArmholes, isOn, outsideOf } from './ink-beyond';
import { LOCATIONS, type LocationId } from './locations';
import type { PlacedPrint } from './placement';

/** What can be wrong with where a print lies on one size. The first three cannot be pressed as they are. */
export type FitKind = 'offGarment' | 'crossesSeam' | 'widerThanArmholes' | 'nearSeam' | 'withinCut' | 'beyondPlaten';

/**
 * One finding on one size. `um` is how near the ink comes to the line (`nearSeam`, `withinCut`), how far it reaches
 * beyond (`offGarment`, `widerThanArmholes`, `beyondPlaten`), or 0 (`crossesSeam`); `neededUm` how far it should keep off.
 * `at` is where on the ink, in mm on the flat.
 */
export type FitFinding = {
  readonly kind: FitKind;
  readonly line: FlatLineName | null;
  readonly um: Micrometres;
  readonly neededUm: Micrometres;
  readonly at: Point;
};

/** What a press takes in one go. */
export type Platen = PressLimits['platenUm'];

/** Largest print a common press takes. */
export const USUAL_PLATEN_UM: Platen = USUAL_PRESS_LIMITS.platenUm;

/** What a fit is judged by besides the flat: where the print is meant to be, how the blank's cut varies, the press. */
export type FitRules = {
  readonly locationId: LocationId;
  readonly cutToleranceUm: CutTolerance;
  /** The usual one when left out. */
  readonly platenUm?: Platen;
};

/**
 * How a placed print fits one flat: every finding, those that cannot be pressed first; none when it can be pressed as it
 * lies. Each line of the garment is said once, where the ink is nearest to it.
 *
 * `nearSeam`: nearer than the line's threshold at this location. `withinCut`: far enough by that threshold, yet nearer
 * than a garment cut within its chart's tolerance may bring the line.
 */
export function fitOnSize(placed: InkOnFlat, flat: FrozenFlat, rules: FitRules): FitFinding[] {
  const ring = closedRing(placed.inkOutline);
  const near = roomsNear(placed.inkBox, flat, rules);
  const crossed = near.filter(({ chain }) => lies(chain, ring));
  const apart = near.filter((room) => !crossed.some(({ line }) => line === room.line));
  return [
    ...offGarment(ring, chainsOf(flat).outline),
    ...crossings(ring, crossed, flat),
    ...nearFindings(ring, apart),
    ...beyondPlaten(placed.inkBox, rules.platenUm ?? USUAL_PLATEN_UM),
  ];
}

/** Whether a placed print has no finding on a flat: the same as `fitOnSize`, without saying what and where. */
export function isClear(placed: InkOnFlat, flat: FrozenFlat, rules: FitRules): boolean {
  if (beyondPlaten(placed.inkBox, rules.platenUm ?? USUAL_PLATEN_UM).length > 0) return false;
  const ring = closedRing(placed.inkOutline);
  return (
    isOn(ring, chainsOf(flat).outline) &&
    roomsNear(placed.inkBox, flat, rules).every(
      (room) => !lies(room.chain, ring) && nearFinding(clearanceBetween(ring, room.chain), room) === null,
    )
  );
}

type InkOnFlat = Pick<PlacedPrint, 'inkOutline' | 'inkBox'>;

/** The lines that could be too near. Most are nowhere near: the boxes around them and the ink say so. */
function roomsNear(inkBox: PlacedPrint['inkBox'], flat: FrozenFlat, { locationId, cutToleranceUm }: FitRules): Room[] {
  const location = LOCATIONS[locationId];
  return chainsOf(flat).lines.flatMap(({ line, chain, box }): Room[] => {
    const needed = gapUm(line, locationId);
    const varies = variesUm(line, location, cutToleranceUm);
    return boxGap(inkBox, box) < mmFromUm(Math.max(needed, varies)) ? [{ line, chain, box, needed, varies }] : [];
  });
}

/** A line with the room a print has to leave it, micrometres. */
type Room = LineChain & { readonly needed: Micrometres; readonly varies: Micrometres };

/** Whether a line runs under the ink: across its edge, or wholly within. */
function lies(chain: Polyline, ring: Polyline): boolean {
  const [first] = chain;
  return chainsMeet(ring, chain) || (first !== undefined && isInside(first, ring));
}

function offGarment(ring: Polyline, outline: Polyline): FitFinding[] {
  const farthest = outsideOf(ring, outline);
  return farthest ? [{ kind: 'offGarment', line: null, um: farthest.um, neededUm: 0, at: farthest.at }] : [];
}

function crossings(ring: Polyline, crossed: readonly Room[], flat: Pick<FrozenFlat, 'side'>): FitFinding[] {
  const wider = beyondArmholes(ring, crossed, flat.side);
  const seams = wider ? crossed.filter(({ line }) => line !== 'armhole') : crossed;
  const once = seams.filter(({ line }, index) => seams.findIndex((other) => other.line === line) === index);
  return [
    ...once.map(({ line, chain, needed }): FitFinding => {
      return { kind: 'crossesSeam', line, um: 0, neededUm: needed, at: clearanceBetween(ring, chain).from };
    }),
    ...(wider
      ? [{ kind: 'widerThanArmholes', line: 'armhole', um: wider.um, neededUm: 0, at: wider.at } as const]
      : []),
  ];
}

/** Of several runs of a line, the one that leaves the least room is said. */
function nearFindings(ring: Polyline, rooms: readonly Room[]): FitFinding[] {
  const nearest = new Map<FlatLineName, FitFinding>();
  for (const room of rooms) {
    const finding = nearFinding(clearanceBetween(ring, room.chain), room);
    if (finding && finding.um < (nearest.get(room.line)?.um ?? Number.POSITIVE_INFINITY)) {
      nearest.set(room.line, finding);
    }
  }
  return [...nearest.values()];
}

function nearFinding({ distance, from }: Clearance, { line, needed, varies }: Room): FitFinding | null {
  const um = umFromMm(distance);
  if (um < needed) return { kind: 'nearSeam', line, um, neededUm: needed, at: from };
  return um < varies ? { kind: 'withinCut', line, um, neededUm: varies, at: from } : null;
}

function beyondPlaten({ x, y, width, height }: PlacedPrint['inkBox'], platen: Platen): FitFinding[] {
  const um = Math.max(umFromMm(width) - platen.widthUm, umFromMm(height) - platen.heightUm);
  return um > 0 ? [{ kind: 'beyondPlaten', line: null, um, neededUm: 0, at: { x, y } }] : [];
}

function closedRing(outline: readonly Point[]): Polyline {
  const [first] = outline;
  return first ? [...outline, first] : [];
}
