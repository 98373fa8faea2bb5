import type { KindDesign } from '../kind-design';
import { longSleeve } from '../shape/hanging-sleeve';
import { ribbedHem } from '../shape/hem';
import { hood } from '../shape/hood';
import { kangarooPocket } from '../shape/pocket';
import { cuffedSleeveSide } from '../shape/sleeve-side';
import { topOf } from '../shape/top-flat';
import {
  CUFF_CHECKS,
  HEM_RIB_CHECKS,
  HOOD_CHECKS,
  LONG_SLEEVE_CHECKS,
  SET_IN_CHECKS,
  SLEEVE_CHECKS,
} from './top-checks';
import { HOOD_ESTIMATES, TOP_REQUIRED, TOP_SIDES } from './top-estimates';

/** A hooded sweatshirt with one hand pocket across the front. */
export const pulloverHood: KindDesign = {
  sides: TOP_SIDES,
  required: TOP_REQUIRED,
  estimates: HOOD_ESTIMATES,
  checks: [
    ...SET_IN_CHECKS,
    ...SLEEVE_CHECKS,
    ...CUFF_CHECKS,
    ...LONG_SLEEVE_CHECKS,
    ...HEM_RIB_CHECKS,
    ...HOOD_CHECKS,
  ],
  draw: topOf({ neck: hood, arm: longSleeve, hem: ribbedHem, over: kangarooPocket, sleeve: cuffedSleeveSide }),
};
