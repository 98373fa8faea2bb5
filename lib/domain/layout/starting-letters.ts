import type { AgeBand } from '../garment/kinds';
import type { Lettering } from '../lettering/lettering';
import { blockHeight } from '../lettering/set-lettering';
import { type Micrometres, UM_PER_INCH, umFromInches } from '../measure/length';
import type { LocationId } from './locations';
import type { StartingValues } from './starting-values';

/** Letter heights in inches, adult, youth, toddler, infant. A name is 2–2 1/2 in on an upper back, a number 8–10 in below it. */
type ByBand = readonly [adult: number, youth: number, toddler: number, infant: number];

/** Letter heights that lettering starts with, in inches (common practice, no source). */
const LETTERS_IN: Readonly<Record<LocationId, ByBand>> = {
  fullFront: [2, 1.5, 1, 0.75],
  centreChest: [1.5, 1.125, 0.75, 0.75],
  leftChest: [0.75, 0.625, 0.5, 0.5],
  rightChest: [0.75, 0.625, 0.5, 0.5],
  upperBack: [2, 1.5, 1, 0.75],
  fullBack: [2.5, 2, 1.25, 1],
  backNeck: [0.75, 0.5, 0.5, 0.5],
  abovePocket: [2, 1.5, 1, 0.75],
  frontNumber: [4, 3, 2, 1.5],
  backNumber: [8, 6, 4, 3],
  leftSleeve: [2, 1.5, 1, 0.75],
  rightSleeve: [2, 1.5, 1, 0.75],
  leg: [1.5, 1.25, 1, 0.75],
  legBack: [1.5, 1.25, 1, 0.75],
  capFront: [1.25, 1, 0.75, 0.75],
  apronBib: [1.25, 1, 0.75, 0.75],
  toteFront: [1.5, 1.5, 1, 1],
  toteBack: [1.5, 1.5, 1, 1],
  panelFront: [1.5, 1.5, 1, 1],
  panelBack: [1.5, 1.5, 1, 1],
};

const BANDS: readonly AgeBand[] = ['adult', 'youth', 'toddler', 'infant'];

/** Letter heights are started in steps of 1/8 in. */
const STEP_UM = UM_PER_INCH / 8;

/**
 * How tall letters start at a location on garments of an age band: the usual height, or less where all lines together
 * would be taller than a print may be there.
 */
export function startingLettersUm(
  locationId: LocationId,
  ageBand: AgeBand,
  lettering: Pick<Lettering, 'lines' | 'lineGapPercent'>,
  { tallestUm }: Pick<StartingValues, 'tallestUm'>,
): Micrometres {
  const usual = umFromInches(LETTERS_IN[locationId][Math.max(0, BANDS.indexOf(ageBand))] ?? 1);
  const most = tallestUm / blockHeight(lettering, 1);
  return usual <= most ? usual : Math.max(STEP_UM, Math.floor(most / STEP_UM) * STEP_UM);
}
