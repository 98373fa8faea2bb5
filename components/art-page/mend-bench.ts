import { type MendStep, MOST_MEND_STEPS, mendStepSchema, type Recipe } from '@/lib/domain/art/mend/recipe';

/** The mending of one picture while it lasts: steps taken, steps taken back, and the one being tried. */
export type MendBench = {
  readonly steps: readonly MendStep[];
  /** Taken back, the last one first. */
  readonly undone: readonly MendStep[];
  readonly inHand: MendStep | null;
};

/** A bench to begin at, with the steps of a mend that is opened again. */
export function startedBench(steps: readonly MendStep[] = []): MendBench {
  return { steps, undone: [], inHand: null };
}

/** Another step to try; null puts away the one being tried. */
export function withInHand(bench: MendBench, inHand: MendStep | null): MendBench {
  return { ...bench, inHand };
}

/** The step being tried with other settings; nothing where it was put away meanwhile. */
export function withChange(bench: MendBench, change: (step: MendStep) => MendStep): MendBench {
  return bench.inHand ? { ...bench, inHand: change(bench.inHand) } : bench;
}

/** Whether the step can be computed as it stands: an erasing without a box cannot. */
export function isWholeStep(step: MendStep): boolean {
  if (step.mend === 'knockOut' && !step.fromEdges && step.enclosed.length === 0) return false;
  return mendStepSchema.safeParse(step).success;
}

/** The step in hand becomes the last one taken. What had been taken back is then gone. */
export function takenStep(bench: MendBench): MendBench {
  const { steps, inHand } = bench;
  if (!(inHand && isWholeStep(inHand) && hasRoom(bench))) return bench;
  return { steps: [...steps, inHand], undone: [], inHand: null };
}

/** Whether another step can be taken. */
export function hasRoom({ steps }: MendBench): boolean {
  return steps.length < MOST_MEND_STEPS;
}

/** Puts away the step being tried; where none is, takes back the last step taken. */
export function undoneStep({ steps, undone, inHand }: MendBench): MendBench {
  if (inHand) return { steps, undone, inHand: null };
  const last = steps.at(-1);
  return last ? { steps: steps.slice(0, -1), undone: [last, ...undone], inHand: null } : { steps, undone, inHand };
}

/** Takes again the step that was taken back last. */
export function redoneStep({ steps, undone, inHand }: MendBench): MendBench {
  const [next, ...rest] = undone;
  return next ? { steps: [...steps, next], undone: rest, inHand: null } : { steps, undone, inHand };
}

/** Only the first so many steps; the others can be taken again. */
export function backTo(bench: MendBench, count: number): MendBench {
  const { steps, undone } = bench;
  return { steps: steps.slice(0, count), undone: [...steps.slice(count), ...undone], inHand: null };
}

/** The steps taken as they are kept with the picture; null while there are none. */
export function recipeOf({ steps }: Pick<MendBench, 'steps'>): Recipe | null {
  return steps.length > 0 ? { format: 1, steps: [...steps] } : null;
}
