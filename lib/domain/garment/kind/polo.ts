import type { KindDesign } from '../kind-design';
import { placket } from '../shape/front-opening';
import { stitchedHem } from '../shape/hem';
import { poloCollar } from '../shape/polo-collar';
import { shortSleeve } from '../shape/short-sleeve';
import { cuffedSleeveSide } from '../shape/sleeve-side';
import { topOf } from '../shape/top-flat';
import { CUFF_CHECKS, POLO_CHECKS, SET_IN_CHECKS, SLEEVE_CHECKS } from './top-checks';
import { of, ofChest, omitted, TEE_ESTIMATES, TOP_REQUIRED, TOP_SIDES } from './top-estimates';

/** A knitted shirt with a turned-down collar, a button stand and ribbed sleeves (proportions: common practice, no source). */
export const polo: KindDesign = {
  sides: TOP_SIDES,
  required: TOP_REQUIRED,
  estimates: {
    ...omitted(TEE_ESTIMATES, 'collarRib'),
    neckWidth: ofChest(80, 0.15),
    frontNeckDrop: ofChest(30, 0.1),
    collarFall: ofChest(42, 0.05),
    placketLength: ofChest(76, 0.13),
    placketWidth: of('placketLength', 16, 0.1),
    sleeveOpening: ofChest(38, 0.25),
    cuffRib: ofChest(14, 0.02),
  },
  checks: [...SET_IN_CHECKS, ...SLEEVE_CHECKS, ...CUFF_CHECKS, ...POLO_CHECKS],
  draw: topOf({
    neck: poloCollar,
    arm: (tape, body) => shortSleeve(tape, body, 'rib'),
    hem: stitchedHem,
    over: placket,
    sleeve: cuffedSleeveSide,
  }),
};
