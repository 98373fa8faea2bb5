import type { KindDesign } from '../kind-design';
import { stitchedHem, waistedSideSeam } from '../shape/hem';
import { ribbedNeck } from '../shape/neckline';
import { shortSleeve } from '../shape/short-sleeve';
import { setInSleeveSide } from '../shape/sleeve-side';
import { topOf } from '../shape/top-flat';
import { NECK_RIB_CHECKS, SET_IN_CHECKS, SLEEVE_CHECKS, WAIST_CHECKS } from './top-checks';
import { ofChest, shoulders, TEE_ESTIMATES, TOP_REQUIRED, TOP_SIDES } from './top-estimates';

/** A tee cut closer, drawn in at the waist, with a wider neck and short sleeves (proportions: common practice, no source). */
export const fittedTee: KindDesign = {
  sides: TOP_SIDES,
  required: TOP_REQUIRED,
  estimates: {
    ...TEE_ESTIMATES,
    acrossShoulder: shoulders(0.8, 0.5),
    neckWidth: ofChest(86, 0.19),
    frontNeckDrop: ofChest(40, 0.17),
    collarRib: ofChest(6, 0.014),
    armhole: ofChest(50, 0.3),
    sleeveOpening: ofChest(42, 0.24),
    waistWidth: ofChest(0, 0.9),
    hemWidth: ofChest(0, 0.98),
  },
  checks: [...SET_IN_CHECKS, ...SLEEVE_CHECKS, ...NECK_RIB_CHECKS, ...WAIST_CHECKS],
  draw: topOf({
    neck: ribbedNeck,
    arm: shortSleeve,
    hem: stitchedHem,
    sideSeam: waistedSideSeam,
    sleeve: setInSleeveSide,
  }),
};
