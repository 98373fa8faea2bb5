import type { FlatLineName } from '../garment/flat';
import { type Micrometres, umFromInches } from '../measure/length';
import type { LocationId } from './locations';

/** How near ink may come to lines, in inches. */
type Gaps = Readonly<Partial<Record<FlatLineName, number>>>;

// Every figure of this file: common practice, no source.

/** Where nothing else is said: half an inch, so that the platen's edge finds the seam beside it and not under it. */
const USUAL_INCHES = 1 / 2;

/** A print across the body keeps an inch off whatever goes round it: a seam that near lifts the platen. */
const BODY: Gaps = {
  collarSeam: 1,
  collarEdge: 3 / 4,
  shoulderSeam: 1,
  armhole: 1,
  sideSeam: 1,
  pocketEdge: 1,
  legEdge: 1,
  hem: 1,
};

/** A small print lies beside a front's opening and its collar by habit; a small platen fits there. */
const CHEST: Gaps = { ...BODY, collarSeam: 3 / 4, collarEdge: 1 / 2, placket: 3 / 4, zip: 3 / 4 };

/** Near its hem by habit; a cuff's seam is flat enough to come closer. */
const SLEEVE: Gaps = { armhole: 1, collarSeam: 1, sleeveHem: 3 / 4, cuffSeam: 3 / 8 };

const LEG: Gaps = { inseam: 1, outseam: 1, rise: 1, pocketEdge: 1, waistSeam: 1, hem: 1 };

/** Sewn round, with straps to lay aside. */
const PANEL: Gaps = { topEdge: 1, bibEdge: 1, strapEdge: 1, sideSeam: 1, pocketEdge: 1, hem: 1 };

const GAPS: Readonly<Record<LocationId, Gaps>> = {
  fullFront: BODY,
  centreChest: BODY,
  leftChest: CHEST,
  rightChest: CHEST,
  upperBack: BODY,
  fullBack: BODY,
  // Meant to sit close under the collar.
  backNeck: { ...BODY, collarSeam: 3 / 4, collarEdge: 1 / 2 },
  abovePocket: BODY,
  frontNumber: BODY,
  backNumber: BODY,
  leftSleeve: SLEEVE,
  rightSleeve: SLEEVE,
  leg: LEG,
  legBack: LEG,
  // Pressed on a curved platen of its own, close to the seams of a panel only 4 in tall.
  capFront: {},
  apronBib: PANEL,
  toteFront: PANEL,
  toteBack: PANEL,
  panelFront: PANEL,
  panelBack: PANEL,
};

/** How near the ink of a print at a location may come to a line of the garment: nearer is `too near a seam`. */
export function gapUm(line: FlatLineName, locationId: LocationId): Micrometres {
  return umFromInches(GAPS[locationId][line] ?? USUAL_INCHES);
}
