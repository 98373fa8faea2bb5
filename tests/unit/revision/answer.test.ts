import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerRefusal, LONGEST_CHANGE, TICKS } from '@/lib/domain/revision/answer';

const yes = { word: 'yes' as const, ticks: [...TICKS], typedName: 'Wren Okafor', words: '' };
const change = { word: 'change' as const, ticks: [], typedName: '', words: 'a touch bigger' };

describe('an answer', () => {
  it('is taken as a yes only with all four ticks', () => {
    fc.assert(
      fc.property(fc.subarray([...TICKS]), (ticks) => {
        expect(answerRefusal({ ...yes, ticks })).toBe(ticks.length === 4 ? null : 'ticksMissing');
      }),
    );
  });

  it('needs a name that is more than spaces to be a yes', () => {
    expect(answerRefusal({ ...yes, typedName: ' \t ' })).toBe('nameMissing');
  });

  it('needs words to be a change, and nothing else', () => {
    expect(answerRefusal(change)).toBeNull();
    expect(answerRefusal({ ...change, words: '  ' })).toBe('wordsMissing');
  });

  it('takes a change up to the longest it keeps', () => {
    expect(answerRefusal({ ...change, words: 'x'.repeat(LONGEST_CHANGE) })).toBeNull();
    expect(answerRefusal({ ...change, words: 'x'.repeat(LONGEST_CHANGE + 1) })).toBe('wordsTooLong');
  });
});
