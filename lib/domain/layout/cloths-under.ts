import type { Garment, Print } from './document';

/** A cloth a print is pressed on. */
export type ClothUnder = { readonly name: string; readonly hex: string };

/** The cloth of every garment a print is on, each once; on a sleeve that is the second cloth where there is one. */
export function clothsUnder(
  { side, garmentIds }: Pick<Print, 'side' | 'garmentIds'>,
  garments: readonly Pick<Garment, 'garmentId' | 'cloth'>[],
): ClothUnder[] {
  const isSleeve = side === 'leftSleeve' || side === 'rightSleeve';
  const under = garments
    .filter(({ garmentId }) => garmentIds.includes(garmentId))
    .map(({ cloth: { name, hex, secondName, secondHex } }) =>
      isSleeve && secondHex ? { name: secondName ?? name, hex: secondHex } : { name, hex },
    );
  return [...new Map(under.map((cloth) => [`${cloth.name} ${cloth.hex}`, cloth])).values()];
}
