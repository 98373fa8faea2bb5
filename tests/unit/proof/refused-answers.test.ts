import { describe, expect, it } from 'vitest';
import { formContent, type RefusedForm, refusedWords } from '@/components/proof/refused-words';
import { EVERY_TICK, TICKS } from '@/lib/domain/revision/answer';
import { keepRefusedAnswer, refusedAnswer } from '@/lib/server/answers/refused-answers';

const refused: RefusedForm = {
  reason: 'nameMissing',
  revisionId: 'rev-1',
  word: 'yes',
  ticks: TICKS,
  typedName: ' ',
  words: '',
};
const place = { shop: { name: 'Otterbank Press' }, currentNumber: 2, hasForm: true, asked: TICKS };

describe('a refused answer', () => {
  it('comes back to the link it was typed through, and to no other', () => {
    const id = keepRefusedAnswer({ linkId: 'one' }, refused);
    expect(refusedAnswer({ linkId: 'one' }, id)).toEqual(refused);
    expect(refusedAnswer({ linkId: 'two' }, id)).toBeNull();
    expect(refusedAnswer({ linkId: 'one' }, `${id}x`)).toBeNull();
  });

  it('keeps words longer than may be sent', () => {
    const words = 'a'.repeat(20_000);
    const id = keepRefusedAnswer({ linkId: 'one' }, { ...refused, reason: 'wordsTooLong', words });
    expect(refusedAnswer({ linkId: 'one' }, id)?.words).toBe(words);
  });

  it('shows ticks again only for the revision they were about', () => {
    const words = refusedWords('en', refused, place);
    expect(formContent('en', refused, words, 'rev-1').ticked).toEqual(TICKS);
    expect(formContent('en', refused, words, 'rev-2').ticked).toEqual([]);
  });

  it('leads to the first tick that is missing', () => {
    const halfTicked = { ...refused, reason: 'ticksMissing', ticks: ['spelling', 'colours'] } as const;
    expect(refusedWords('en', halfTicked, place).fieldId).toBe('tick-counts');
    const noneForSoft = { ...refused, reason: 'ticksMissing' } as const;
    const words = refusedWords('en', noneForSoft, { ...place, asked: EVERY_TICK });
    expect([words.fieldId, words.sentence]).toEqual(['tick-soft', expect.stringContaining('the five things')]);
  });

  it('shows what was typed where there is no form to stand in', () => {
    const change = { ...refused, reason: 'alreadySignedOff', word: 'change', words: 'Lower, please.' } as const;
    const words = refusedWords('en', change, { ...place, hasForm: false });
    expect([words.fieldId, words.typed?.text]).toEqual([null, 'Lower, please.']);
    expect(words.sentence).toContain('Otterbank Press');
  });
});
