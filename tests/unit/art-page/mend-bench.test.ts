import { describe, expect, it } from 'vitest';
import {
  backTo,
  hasRoom,
  isWholeStep,
  type MendBench,
  recipeOf,
  redoneStep,
  startedBench,
  takenStep,
  undoneStep,
  withChange,
  withInHand,
} from '@/components/art-page/mend-bench';
import { type MendStep, MOST_MEND_STEPS, recipeSchema } from '@/lib/domain/art/mend/recipe';

const trim: MendStep = { mend: 'trim' };
const harden: MendStep = { mend: 'hardenEdge', alpha: 128 };
const turn: MendStep = { mend: 'turn', quarters: 1 };

function taken(...steps: MendStep[]): MendBench {
  return steps.reduce((bench, step) => takenStep(withInHand(bench, step)), startedBench());
}

describe('the bench of mends', () => {
  it('keeps the steps in the order they were taken, as a recipe that can be read back', () => {
    const recipe = recipeOf(taken(trim, harden, turn));
    expect(recipeSchema.parse(recipe).steps).toEqual([trim, harden, turn]);
    expect(recipeOf(startedBench())).toBeNull();
  });

  it('takes back and takes again step by step, down to the original and up to the last', () => {
    const all = taken(trim, harden, turn);
    const none = undoneStep(undoneStep(undoneStep(all)));
    expect(none.steps).toEqual([]);
    expect(undoneStep(none)).toEqual(none);
    expect(redoneStep(redoneStep(redoneStep(none)))).toEqual(all);
    expect(redoneStep(all)).toEqual(all);
  });

  it('puts away the step being tried before it takes one back', () => {
    const trying = withInHand(taken(trim), harden);
    expect(undoneStep(trying)).toEqual(taken(trim));
  });

  it('goes back to any step at once, and every step after it can be taken again', () => {
    const all = taken(trim, harden, turn);
    expect(backTo(all, 1).steps).toEqual([trim]);
    expect(redoneStep(redoneStep(backTo(all, 1)))).toEqual(all);
  });

  it('forgets what was taken back once another step is taken', () => {
    const other = takenStep(withInHand(undoneStep(taken(trim, harden)), turn));
    expect(other).toEqual(taken(trim, turn));
  });

  it('takes no step that cannot be computed as it stands', () => {
    const boxless: MendStep = { mend: 'erase', boxes: [] };
    const nowhere: MendStep = { mend: 'knockOut', hex: '#FFFFFF', tolerance: 8, fromEdges: false, enclosed: [] };
    for (const step of [boxless, nowhere]) {
      expect(isWholeStep(step)).toBe(false);
      expect(takenStep(withInHand(taken(trim), step)).steps).toEqual([trim]);
    }
    expect(isWholeStep({ ...nowhere, enclosed: [{ x: 3, y: 4 }] })).toBe(true);
  });

  it('takes as many steps as a recipe holds and no more', () => {
    const full = taken(...Array.from({ length: MOST_MEND_STEPS + 2 }, () => trim));
    expect(full.steps).toHaveLength(MOST_MEND_STEPS);
    expect(hasRoom(full)).toBe(false);
  });

  it('changes the step being tried, and nothing where it was put away meanwhile', () => {
    const change = () => turn;
    expect(withChange(withInHand(taken(trim), harden), change).inHand).toEqual(turn);
    expect(withChange(taken(trim), change)).toEqual(taken(trim));
  });
});
