import type { FlatPointName, Side } from '@/lib/domain/garment/flat';
import type { Translator } from '@/lib/messages/translator';

/** A named place as it is found in a photograph: `collar seam, centre`. A sleeve has its own names. */
export function placeWords(t: Translator<'photographs'>, side: Side, name: FlatPointName): string {
  const isSleeve = side === 'leftSleeve' || side === 'rightSleeve';
  if (isSleeve && (name === 'shoulderPoint' || name === 'sleeveHemFold')) return t(`sleevePlace.${name}`);
  return t(`place.${name}`);
}
