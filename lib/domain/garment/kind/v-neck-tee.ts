import type { KindDesign } from '../kind-design';
import { stitchedHem } from '../shape/hem';
import { ribbedNeck, veeNeck } from '../shape/neckline';
import { shortSleeve } from '../shape/short-sleeve';
import { setInSleeveSide } from '../shape/sleeve-side';
import { topOf } from '../shape/top-flat';
import { SET_IN_CHECKS, SLEEVE_CHECKS, VEE_RIB_CHECKS } from './top-checks';
import { ofChest, TEE_ESTIMATES, TOP_REQUIRED, TOP_SIDES } from './top-estimates';

/** A crew tee with a V at the front (proportions: common practice, no source). */
export const vNeckTee: KindDesign = {
  sides: TOP_SIDES,
  required: TOP_REQUIRED,
  estimates: {
    ...TEE_ESTIMATES,
    neckWidth: ofChest(76, 0.17),
    frontNeckDrop: ofChest(66, 0.18),
    collarRib: ofChest(8, 0.014),
  },
  checks: [...SET_IN_CHECKS, ...SLEEVE_CHECKS, ...VEE_RIB_CHECKS],
  draw: topOf({
    neck: (tape, frame, side) => ribbedNeck(tape, frame, side, veeNeck),
    arm: shortSleeve,
    hem: stitchedHem,
    sleeve: setInSleeveSide,
  }),
};
