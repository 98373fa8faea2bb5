import type { Cloth } from '@/lib/domain/layout/document';
import type { ReadingsTranslator } from './reading-words';

/** A garment's colours in words, as its customer would say them: `Navy`, `White with Navy sleeves and collar`. */
export function colourWords(t: ReadingsTranslator, { name, secondName }: Pick<Cloth, 'name' | 'secondName'>): string {
  return secondName === undefined ? name : t('cloth.two', { name, second: secondName });
}

/** A garment's cloth in words, as its maker picks it from the shelf: `Navy`, `Grey, heather`. */
export function clothWords(t: ReadingsTranslator, cloth: Pick<Cloth, 'name' | 'secondName' | 'heather'>): string {
  const colours = colourWords(t, cloth);
  return cloth.heather ? t('cloth.heather', { colours }) : colours;
}
