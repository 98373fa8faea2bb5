import type { KindDesign } from '../kind-design';
import { longSleeve } from '../shape/hanging-sleeve';
import { ribbedHem } from '../shape/hem';
import { ribbedNeck } from '../shape/neckline';
import { cuffedSleeveSide } from '../shape/sleeve-side';
import { topOf } from '../shape/top-flat';
import {
  CUFF_CHECKS,
  HEM_RIB_CHECKS,
  LONG_SLEEVE_CHECKS,
  NECK_RIB_CHECKS,
  SET_IN_CHECKS,
  SLEEVE_CHECKS,
} from './top-checks';
import { SWEAT_ESTIMATES, TOP_REQUIRED, TOP_SIDES } from './top-estimates';

/** A sweatshirt with a round neck, ribbed at neck, cuffs and waist. */
export const crewSweatshirt: KindDesign = {
  sides: TOP_SIDES,
  required: TOP_REQUIRED,
  estimates: SWEAT_ESTIMATES,
  checks: [
    ...SET_IN_CHECKS,
    ...NECK_RIB_CHECKS,
    ...SLEEVE_CHECKS,
    ...CUFF_CHECKS,
    ...LONG_SLEEVE_CHECKS,
    ...HEM_RIB_CHECKS,
  ],
  draw: topOf({ neck: ribbedNeck, arm: longSleeve, hem: ribbedHem, sleeve: cuffedSleeveSide }),
};
