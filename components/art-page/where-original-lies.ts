import type { ArtFacts } from '@/lib/domain/art/art-facts';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import { composed, type Matrix, scaledAndMoved } from '@/lib/domain/geometry/matrix';

/** What must be known of the picture a step is given, to say where the step puts it. */
export type BeforeStep = Pick<ArtFacts, 'widthPx' | 'heightPx' | 'inkBox'>;

/**
 * Where the pixels of a picture lie in what a step makes of it, so that both can be laid over one another. px to px.
 *
 *   crop          trim          quarter turn      redraw ×2
 *   ┌─────┐       ┌─────┐       ┌──┐   ┌────┐     ┌─┐   ┌───┐
 *   │ ┌─┐ │  ┌─┐  │ ink │ ink   │A │ → │  A │     │ │ → │   │
 *   └─────┘       └─────┘       │  │   └────┘     └─┘   └───┘
 */
export function placeAfterStep(step: MendStep, before: BeforeStep): Matrix {
  switch (step.mend) {
    case 'crop':
      return scaledAndMoved(1, -step.box.x, -step.box.y);
    case 'trim':
      return scaledAndMoved(1, -before.inkBox.x, -before.inkBox.y);
    case 'redraw':
      return scaledAndMoved(step.scale, 0, 0);
    case 'turn':
      if (step.quarters === 1) return [0, 1, -1, 0, before.heightPx, 0];
      if (step.quarters === 2) return [-1, 0, 0, -1, before.widthPx, before.heightPx];
      return [0, -1, 1, 0, 0, before.widthPx];
    default:
      return scaledAndMoved(1, 0, 0);
  }
}

/**
 * Where the picture before all steps lies in what they made of it; `befores` are what each step was given. Null while one
 * of them is not known.
 */
export function whereOriginalLies(steps: readonly MendStep[], befores: readonly (BeforeStep | null)[]): Matrix | null {
  let place: Matrix = scaledAndMoved(1, 0, 0);
  for (const [index, step] of steps.entries()) {
    const before = befores[index];
    if (!before) return null;
    place = composed(placeAfterStep(step, before), place);
  }
  return place;
}
