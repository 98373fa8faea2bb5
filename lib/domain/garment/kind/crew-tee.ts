import type { KindDesign } from '../kind-design';
import { stitchedHem } from '../shape/hem';
import { ribbedNeck } from '../shape/neckline';
import { shortSleeve } from '../shape/short-sleeve';
import { setInSleeveSide } from '../shape/sleeve-side';
import { topOf } from '../shape/top-flat';
import { NECK_RIB_CHECKS, SET_IN_CHECKS, SLEEVE_CHECKS } from './top-checks';
import { TEE_ESTIMATES, TOP_REQUIRED, TOP_SIDES } from './top-estimates';

/** A tee with a round neck and short set-in sleeves. Youth and toddler tees are the same cut on a smaller chart. */
export const crewTee: KindDesign = {
  sides: TOP_SIDES,
  required: TOP_REQUIRED,
  estimates: TEE_ESTIMATES,
  checks: [...SET_IN_CHECKS, ...SLEEVE_CHECKS, ...NECK_RIB_CHECKS],
  draw: topOf({ neck: ribbedNeck, arm: shortSleeve, hem: stitchedHem, sleeve: setInSleeveSide }),
};
