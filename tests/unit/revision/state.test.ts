import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnswerFacts, currentNumber, layoutIsLocked, revisionState, standing } from '@/lib/domain/revision/state';

const revisions = fc.uniqueArray(fc.record({ number: fc.integer({ min: 1, max: 30 }), withdrawn: fc.boolean() }), {
  selector: ({ number }) => number,
  minLength: 1,
});

const answers = fc.array(
  fc.record({
    contactId: fc.constantFrom('coach', 'treasurer', 'helper'),
    word: fc.constantFrom('yes' as const, 'change' as const),
    how: fc.constantFrom('link' as const, 'phone' as const),
  }),
);

function answer(contactId: string, word: AnswerFacts['word']): AnswerFacts {
  return { contactId, word, how: 'link' };
}

describe('the state of a revision', () => {
  it('is current for at most one revision of a job, the newest that was not withdrawn', () => {
    fc.assert(
      fc.property(revisions, (all) => {
        const current = all.filter(({ number }) => revisionState(number, all) === 'current');
        const standingOnes = all.filter(({ withdrawn }) => !withdrawn);
        expect(current.map(({ number }) => number)).toEqual(
          standingOnes.length === 0 ? [] : [Math.max(...standingOnes.map(({ number }) => number))],
        );
      }),
    );
  });

  it('goes back to the earlier revision when the newer one is withdrawn', () => {
    const all = [
      { number: 1, withdrawn: false },
      { number: 2, withdrawn: true },
    ];
    expect(currentNumber(all)).toBe(1);
    expect(revisionState(1, all)).toBe('current');
    expect(revisionState(2, all)).toBe('withdrawn');
  });

  it('refuses a number the job does not have', () => {
    expect(() => revisionState(7, [{ number: 1, withdrawn: false }])).toThrow('no revision 7');
  });
});

describe('where a revision stands', () => {
  it('is signed off only when everybody who must sign said yes last and nobody said change last', () => {
    fc.assert(
      fc.property(answers, (said) => {
        const lastOf = (id: string) => said.findLast(({ contactId }) => contactId === id)?.word;
        const everybody = ['coach', 'treasurer'].every((id) => lastOf(id) === 'yes');
        const nobodyObjects = ['coach', 'treasurer', 'helper'].every((id) => lastOf(id) !== 'change');
        expect(standing(['coach', 'treasurer'], said) === 'signedOff').toBe(everybody && nobodyObjects);
      }),
    );
  });

  it('lets one change outweigh any number of yeses', () => {
    expect(standing(['coach', 'treasurer'], [answer('coach', 'yes'), answer('treasurer', 'change')])).toBe(
      'changeAsked',
    );
  });

  it('lets a later yes take a change back', () => {
    expect(standing(['coach'], [answer('coach', 'change'), answer('coach', 'yes')])).toBe('signedOff');
  });

  it('is never signed off when nobody has to sign', () => {
    expect(standing([], [answer('helper', 'yes')])).toBe('unanswered');
  });
});

describe('the lock', () => {
  it('holds from the sign-off until the maker opens that revision again', () => {
    expect(layoutIsLocked(null, null)).toBe(false);
    expect(layoutIsLocked({ number: 2, standing: 'changeAsked' }, null)).toBe(false);
    expect(layoutIsLocked({ number: 2, standing: 'signedOff' }, null)).toBe(true);
    expect(layoutIsLocked({ number: 2, standing: 'signedOff' }, 1)).toBe(true);
    expect(layoutIsLocked({ number: 2, standing: 'signedOff' }, 2)).toBe(false);
  });
});
