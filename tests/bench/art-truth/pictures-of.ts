import {
  cleanPicture,
  hazePicture,
  largePicture,
  marginPicture,
  resolutionPicture,
  speckPicture,
  vanishingPicture,
} from './clear-pictures';
import { backedPicture, enlargedPicture, junkPicture, rectanglePicture } from './opaque-pictures';
import { type Random, randomFrom } from './random';
import { gapPicture, strokePicture } from './thickness-pictures';
import type { TruthPicture } from './truth-picture';

/** Of each family, with the fault and without it. */
const EACH = { withFault: 12, nearMiss: 8 };

type Family = (random: Random, isFault: boolean) => TruthPicture;
const FAMILIES: readonly Family[] = [
  strokePicture,
  gapPicture,
  hazePicture,
  speckPicture,
  marginPicture,
  vanishingPicture,
  resolutionPicture,
  largePicture,
  backedPicture,
  junkPicture,
  enlargedPicture,
];
const WITHOUT_FAULT: readonly ((random: Random) => TruthPicture)[] = [cleanPicture, rectanglePicture];

/** The pictures of one half, the same for the same seed. */
export function picturesOf(seed: number): TruthPicture[] {
  const random = randomFrom(seed);
  const times = (count: number, make: () => TruthPicture) => Array.from({ length: count }, make);
  return [
    ...FAMILIES.flatMap((family) => [
      ...times(EACH.withFault, () => family(random, true)),
      ...times(EACH.nearMiss, () => family(random, false)),
    ]),
    ...WITHOUT_FAULT.flatMap((family) => times(EACH.withFault, () => family(random))),
  ];
}
