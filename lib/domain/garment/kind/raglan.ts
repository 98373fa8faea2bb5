import type { KindDesign } from '../kind-design';
import { inSecondCloth } from '../shape/drawn';
import { stitchedHem } from '../shape/hem';
import { ribbedNeck } from '../shape/neckline';
import { raglanArm } from '../shape/raglan-arm';
import { raglanSleeveSide } from '../shape/sleeve-side';
import { topOf } from '../shape/top-flat';
import { raglanFrame } from '../shape/top-frame';
import { NECK_RIB_CHECKS, RAGLAN_CHECKS, RAGLAN_SLEEVE_CHECKS } from './top-checks';
import { ofChest, RAGLAN_ESTIMATES, TOP_REQUIRED, TOP_SIDES } from './top-estimates';

/** A tee with three-quarter raglan sleeves; sleeves and collar are of the second cloth. */
export const raglan: KindDesign = {
  sides: TOP_SIDES,
  required: TOP_REQUIRED,
  estimates: { ...RAGLAN_ESTIMATES, sleeveOpening: ofChest(52, 0.17) },
  checks: [...RAGLAN_CHECKS, ...RAGLAN_SLEEVE_CHECKS, ...NECK_RIB_CHECKS],
  draw: topOf({
    frame: raglanFrame,
    neck: (tape, frame, side) => {
      const neck = ribbedNeck(tape, frame, side);
      return { ...neck, over: inSecondCloth(neck.over) };
    },
    arm: (tape, body) => raglanArm(tape, body, 'hem'),
    hem: stitchedHem,
    sleeve: raglanSleeveSide,
  }),
};
