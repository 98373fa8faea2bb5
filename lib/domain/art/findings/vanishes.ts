import type { ArtFacts } from '../art-facts';
import { hexDifference } from '../colour/ciede2000';
import type { FindingOf, VanishingCloth } from './art-finding';

/** Ink nearer to the cloth than this is hardly seen on it (ΔE00; common practice, no source). */
export const SEEN_FROM_DELTA_E = 10;
/** As much of the ink has to be that near before it is told: a thin white rim on white cloth is often meant. */
const LEAST_SHARE = 0.15;

/** A garment's cloth, as far as ink can vanish on it. */
export type ClothColour = { readonly name: string; readonly hex: string };

/** Ink that can hardly be told from the cloth. */
export function vanishes(facts: ArtFacts, cloths: readonly ClothColour[]): FindingOf<'vanishes'> | null {
  const vanishing = cloths.flatMap((cloth): VanishingCloth[] => {
    const near = facts.colours.filter(({ hex }) => hexDifference(hex, cloth.hex) < SEEN_FROM_DELTA_E);
    const share = near.reduce((sum, colour) => sum + colour.share, 0);
    return share < LEAST_SHARE ? [] : [{ ...cloth, share: Math.min(1, share), colours: near.map(({ hex }) => hex) }];
  });
  if (vanishing.length === 0) return null;
  return {
    code: 'vanishes',
    severity: 'warns',
    spots: [],
    numbers: { cloths: vanishing },
    mends: facts.oneColourHex !== null && facts.backing === null ? ['recolour'] : [],
    passesAtWidthUm: null,
  };
}
