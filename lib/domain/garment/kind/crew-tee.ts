import type { KindDesign } from '../kind-design';
import { shortSleeve } from '../shape/arm';
import { stitchedHem } from '../shape/hem';
import { ribbedNeck } from '../shape/neckline';
import { setInSleeveSide } from '../shape/sleeve-side';
import { topOf } from '../shape/top-flat';
import { NECK_RIB_CHECKS, SET_IN_CHECKS, SLEEVE_CHECKS, TEE_ESTIMATES, TOP_REQUIRED, TOP_SIDES } from './top-measures';

/** A tee with a round neck and short set-in sleeves. Youth and toddler tees are the same cut on a smaller chart. */
export const crewTee: KindDesign = {
  sides: TOP_SIDES,
  required: TOP_REQUIRED,
  estimates: TEE_ESTIMATES,
  checks: [...SET_IN_CHECKS, ...SLEEVE_CHECKS, ...NECK_RIB_CHECKS],
  draw: topOf({ neck: ribbedNeck, arm: shortSleeve, hem: stitchedHem, sleeve: setInSleeveSide }),
};
