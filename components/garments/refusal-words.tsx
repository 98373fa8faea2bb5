import type { ReactNode } from 'react';
import type { Translator } from '@/lib/messages/translator';
import type { FormState } from '../ui/form-state';

/** Why an edit of a job's garments was refused as a whole. */
export type GarmentRefusal =
  | 'locked'
  | 'noJob'
  | 'noGarment'
  | 'tooMany'
  | 'noStyle'
  | 'noSizes'
  | 'impossible'
  | 'noBlank'
  | 'otherKind'
  | 'alreadyHung'
  | 'tooManyBlanks'
  | 'lastBlank'
  | 'counted'
  | 'countsFollowList'
  | 'countedSizesGone'
  | 'placeDoesNotSuit'
  | 'tooManyGroups';

/** The most garments a job holds, as its layout document allows. */
export const MOST_GARMENTS = 20;

/** A refused form in one sentence, with the way to where it is mended; null for a form that was not refused. */
export function garmentRefusal(t: Translator<'garments'>, { refusal, detail }: FormState): ReactNode {
  if (refusal === null) return null;
  const words = t(`refusal.${refusal as GarmentRefusal}`, { most: MOST_GARMENTS, ...detail });
  if (!detail?.mendAt) return words;
  return (
    <>
      {words} <a href={String(detail.mendAt)}>{t('refusal.mend')}</a>
    </>
  );
}
