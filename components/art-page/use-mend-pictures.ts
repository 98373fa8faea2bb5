import { useState } from 'react';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import type { Matrix } from '@/lib/domain/geometry/matrix';
import type { ShownPicture } from './fetch-preview';
import { isWholeStep, type MendBench } from './mend-bench';
import { type PreviewedArt, type Previews, usePreviews } from './use-previews';
import { whereOriginalLies } from './where-original-lies';
import type { SteppedPicture } from './wiped-pictures';

export type MendPictures = {
  /** What the step in hand is given: the picture after the steps taken. Null while it is computed. */
  readonly given: ShownPicture | null;
  /** What is to be seen: after the step in hand where that can be shown, else the newest there is. */
  readonly shown: SteppedPicture;
  /** What it is compared with: the picture before the step in hand, or as it came. */
  readonly compared: SteppedPicture;
  readonly placeOfCompared: Matrix | null;
  readonly placeOfOriginal: Matrix | null;
  readonly isWorking: boolean;
  /** A code for why the step in hand, or the last one taken, cannot be done. */
  readonly refusal: string | null;
  /** Whether the step shown changes any pixel. */
  readonly changesNothing: boolean;
  readonly again: () => void;
  /** Whether a box is being drawn. */
  readonly drawing: boolean;
  readonly setDrawing: (drawing: boolean) => void;
};

/** The pictures a bench of mends is shown by: each is computed by the server on all pixels, as soon as it is wanted. */
export function useMendPictures(art: PreviewedArt, bench: MendBench): MendPictures {
  const [drawing, setDrawing] = useState(false);
  const { steps, inHand } = bench;
  const tried = inHand && isSeenAfter(inHand) && isWholeStep(inHand) ? [...steps, inHand] : null;
  const previews = usePreviews(art, [steps, tried]);
  const given = previews.of(steps);
  const trying = tried ? previews.of(tried) : null;
  const newest = newestReady(previews, steps);
  const shown = tried && trying?.state === 'ready' ? { steps: tried, picture: trying.picture } : newest;
  const compared = inHand ? newest : { steps: [], picture: art.original };
  const refused = [given, trying].find((each) => each?.state === 'refused');
  const placeOf = (from: number) => {
    const befores = shown.steps.slice(from).map((_, index) => {
      const before = previews.of(shown.steps.slice(0, from + index));
      return before.state === 'ready' ? before.picture.facts : null;
    });
    return whereOriginalLies(shown.steps.slice(from), befores);
  };
  return {
    given: given.state === 'ready' ? given.picture : null,
    shown,
    compared,
    placeOfCompared: placeOf(compared.steps.length),
    placeOfOriginal: placeOf(0),
    isWorking: given.state === 'working' || trying?.state === 'working',
    refusal: refused?.state === 'refused' ? refused.reason : null,
    changesNothing: tried !== null && shown.steps === tried && !isChanged(shown.picture, newest.picture),
    again: previews.again,
    drawing,
    setDrawing,
  };
}

/** A box is set on the picture as it is before; everything else is judged by what it makes. */
function isSeenAfter({ mend }: MendStep): boolean {
  return mend !== 'crop' && mend !== 'erase';
}

/** The picture after as many of the steps as have been computed. */
function newestReady(previews: Previews, steps: readonly MendStep[]): SteppedPicture {
  for (let count = steps.length; count > 0; count -= 1) {
    const some = steps.slice(0, count);
    const preview = previews.of(some);
    if (preview.state === 'ready') return { steps: some, picture: preview.picture };
  }
  const original = previews.of([]);
  if (original.state !== 'ready') throw new Error(`the original is ${original.state}`);
  return { steps: [], picture: original.picture };
}

function isChanged(after: ShownPicture, before: ShownPicture): boolean {
  return after.changed && JSON.stringify(after.facts) !== JSON.stringify(before.facts);
}
