import type { Translator } from '@/lib/messages/translator';

/** Why an edit of a job's garments was refused as a whole. */
export type GarmentRefusal = 'locked' | 'noJob' | 'noGarment' | 'tooMany';

/** The most garments a job holds, as its layout document allows. */
export const MOST_GARMENTS = 20;

/** A refusal in one sentence. */
export function refusalWords(t: Translator<'garments'>, refusal: GarmentRefusal): string {
  return t(`refusal.${refusal}`, { most: MOST_GARMENTS });
}
