import type { KindDesign } from '../kind-design';
import { stacked } from '../shape/drawn';
import { ZIP_TAPE_MM, zip } from '../shape/front-opening';
import { longSleeve } from '../shape/hanging-sleeve';
import { ribbedHem } from '../shape/hem';
import { hood } from '../shape/hood';
import { splitPocket } from '../shape/pocket';
import { cuffedSleeveSide } from '../shape/sleeve-side';
import { topOf } from '../shape/top-flat';
import { pulloverHood } from './pullover-hood';

/** A hooded sweatshirt with a zip down the front and a pocket on either side of it. */
export const zipHood: KindDesign = {
  ...pulloverHood,
  draw: topOf({
    neck: hood,
    arm: longSleeve,
    hem: ribbedHem,
    over: (tape, body) => stacked(splitPocket(tape, body, ZIP_TAPE_MM + 8), zip(tape('frontNeckDrop') - 6, body)),
    sleeve: cuffedSleeveSide,
  }),
};
