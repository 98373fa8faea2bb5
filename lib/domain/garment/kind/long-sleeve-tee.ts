import type { KindDesign } from '../kind-design';
import { longSleeve } from '../shape/hanging-sleeve';
import { stitchedHem } from '../shape/hem';
import { ribbedNeck } from '../shape/neckline';
import { cuffedSleeveSide } from '../shape/sleeve-side';
import { topOf } from '../shape/top-flat';
import { CUFF_CHECKS, LONG_SLEEVE_CHECKS, NECK_RIB_CHECKS, SET_IN_CHECKS, SLEEVE_CHECKS } from './top-checks';
import { CUFF_ESTIMATES, TEE_ESTIMATES, TOP_REQUIRED, TOP_SIDES } from './top-estimates';

/** A crew tee with long sleeves in knitted cuffs. */
export const longSleeveTee: KindDesign = {
  sides: TOP_SIDES,
  required: TOP_REQUIRED,
  estimates: { ...TEE_ESTIMATES, ...CUFF_ESTIMATES },
  checks: [...SET_IN_CHECKS, ...NECK_RIB_CHECKS, ...SLEEVE_CHECKS, ...CUFF_CHECKS, ...LONG_SLEEVE_CHECKS],
  draw: topOf({ neck: ribbedNeck, arm: longSleeve, hem: stitchedHem, sleeve: cuffedSleeveSide }),
};
