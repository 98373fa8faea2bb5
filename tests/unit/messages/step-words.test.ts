import { describe, expect, it } from 'vitest';
import { stepWords } from '@/lib/messages/step-words';
import { translatorFor } from '@/lib/messages/translator';

const t = translatorFor('en', 'bench');

describe('what happens next, in words', () => {
  it('names the revision that is sent next', () => {
    expect(stepWords(t, { step: 'sendChanged', turn: 'maker', number: 2 })).toMatch(/Rev 2 .*Rev 3/);
    expect(stepWords(t, { step: 'reopened', turn: 'maker', number: 4 })).toMatch(/Rev 4.*Rev 5/);
  });

  it('tells an opened revision from one that was not', () => {
    const said = [true, false].map((opened) => stepWords(t, { step: 'waiting', turn: 'customer', number: 1, opened }));
    expect(new Set(said).size).toBe(2);
  });

  it('quotes what the customer wants changed on one line, and cuts it short when it is long', () => {
    const step = { step: 'changeAsked', turn: 'maker', number: 1 } as const;
    expect(stepWords(t, { ...step, words: 'smaller\n\n  please' })).toContain('“smaller please”');
    const long = stepWords(t, { ...step, words: 'ß'.repeat(500) });
    expect(long).toContain(`${'ß'.repeat(89)}…`);
    expect(long).not.toContain('ß'.repeat(90));
    expect(stepWords(t, { ...step, words: ' ' })).not.toContain('“');
  });

  it('leaves an ICU brace or tag in the customer’s words alone', () => {
    const step = { step: 'changeAsked', turn: 'maker', number: 1, words: '{number} <b>bold</b>' } as const;
    expect(stepWords(t, step)).toContain('“{number} <b>bold</b>”');
  });
});
