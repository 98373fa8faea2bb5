import type { KindDesign } from '../kind-design';
import { bareArm } from '../shape/bare-arm';
import { stitchedHem } from '../shape/hem';
import { ribbedNeck } from '../shape/neckline';
import { topOf } from '../shape/top-flat';
import { NECK_RIB_CHECKS, SET_IN_CHECKS } from './top-checks';
import { ofChest } from './top-estimates';

/** A sleeveless top with a scooped neck, bound at neck and armholes (proportions: common practice, no source). */
export const tank: KindDesign = {
  sides: ['front', 'back'],
  required: ['bodyLength', 'chestWidth'],
  estimates: {
    neckWidth: ofChest(92, 0.2),
    acrossShoulder: (tape) => tape('neckWidth') + 76 + 0.1 * tape('chestWidth'),
    frontNeckDrop: ofChest(50, 0.2),
    backNeckDrop: ofChest(26, 0.09),
    collarRib: ofChest(6, 0.012),
    armhole: ofChest(62, 0.32),
    hemWidth: ofChest(0, 1),
  },
  checks: [...SET_IN_CHECKS, ...NECK_RIB_CHECKS],
  draw: topOf({ neck: ribbedNeck, arm: bareArm, hem: stitchedHem }),
};
