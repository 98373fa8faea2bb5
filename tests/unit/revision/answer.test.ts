import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerRefusal, EVERY_TICK, LONGEST_CHANGE, TICKS, ticksAsked } from '@/lib/domain/revision/answer';

const yes = { word: 'yes' as const, ticks: [...TICKS], typedName: 'Wren Okafor', words: '' };
const change = { word: 'change' as const, ticks: [], typedName: '', words: 'a touch bigger' };

describe('an answer', () => {
  it('is taken as a yes only with all four ticks', () => {
    fc.assert(
      fc.property(fc.subarray([...TICKS]), (ticks) => {
        expect(answerRefusal({ ...yes, ticks }, TICKS)).toBe(ticks.length === 4 ? null : 'ticksMissing');
      }),
    );
  });

  it('needs a fifth tick where something comes out soft, and there only', () => {
    const asked = ticksAsked({ soft: true });
    expect(answerRefusal(yes, asked)).toBe('ticksMissing');
    expect(answerRefusal({ ...yes, ticks: [...EVERY_TICK] }, asked)).toBeNull();
    expect(ticksAsked({ soft: false })).toEqual(TICKS);
  });

  it('needs a name that is more than spaces to be a yes', () => {
    expect(answerRefusal({ ...yes, typedName: ' \t ' }, TICKS)).toBe('nameMissing');
  });

  it('needs words to be a change, and nothing else', () => {
    expect(answerRefusal(change, TICKS)).toBeNull();
    expect(answerRefusal({ ...change, words: '  ' }, TICKS)).toBe('wordsMissing');
  });

  it('takes a change up to the longest it keeps', () => {
    expect(answerRefusal({ ...change, words: 'x'.repeat(LONGEST_CHANGE) }, TICKS)).toBeNull();
    expect(answerRefusal({ ...change, words: 'x'.repeat(LONGEST_CHANGE + 1) }, TICKS)).toBe('wordsTooLong');
  });
});
