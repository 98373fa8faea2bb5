import { describe, expect, it } from 'vitest';
import { setCounts } from '@/lib/domain/layout/garment-edits';
import { NOTHING_OPEN } from '@/lib/domain/people/list-check';
import { nextStep, sendRefusal } from '@/lib/domain/revision/next-step';
import { teeWithPrints } from '../layout/sample-layout';

const counts = [{ blankId: 'crew-tee-adult', sizeId: 'M', quantity: 6 }];
const facts = { layout: setCounts(teeWithPrints(['fullFront']), 'tee', counts), current: null, reopened: false };
const sent = { number: 1, standing: 'unanswered' as const, opened: true, changeWords: '' };

describe('a list of people with something open', () => {
  it('is settled before anything is sent', () => {
    expect(nextStep(facts).step).toBe('sendFirst');
    const open = { findings: 2, stops: 1, unconfirmed: 0 };
    expect(nextStep({ ...facts, open })).toEqual({ step: 'checkList', turn: 'maker', findings: 2, unconfirmed: 0 });
    expect(nextStep({ ...facts, open, current: { ...sent, edited: true } }).step).toBe('checkList');
    expect(nextStep({ ...facts, open, current: { ...sent, edited: false } }).step).toBe('waiting');
  });

  it('stops sending while it cannot be told what is made, or lines the shop wants confirmed are not', () => {
    expect(sendRefusal(facts.layout)).toBeNull();
    expect(sendRefusal(facts.layout, { ...NOTHING_OPEN, findings: 3 })).toBeNull();
    expect(sendRefusal(facts.layout, { ...NOTHING_OPEN, findings: 1, stops: 1 })).toBe('listUnclear');
    expect(sendRefusal(facts.layout, { ...NOTHING_OPEN, unconfirmed: 1 })).toBe('notConfirmed');
  });
});
