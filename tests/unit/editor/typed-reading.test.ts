import { describe, expect, it } from 'vitest';
import { presentReading, turnValue, typedReading, typedTurn } from '@/lib/editor/typed-reading';
import { LEAF } from '../layout/sample-layout';

const group = { widthUm: 254_000, dropUm: -25_400, acrossUm: -101_600 };
const present = (name: Parameters<typeof presentReading>[0]) => presentReading(name, LEAF, group);

describe('a reading typed on the tape', () => {
  // 1 in = 25.4 mm exactly (NIST SP 811, Appendix B).
  it.each([
    ['width', '9 1/2', 241_300],
    ['width', '24 cm', 240_000],
    ['width', '+1/8', 257_175],
    ['height', '5"', 127_000],
    ['drop', '-1', -25_400],
    ['drop', '+1/8', -22_225],
    ['across', '3', -76_200],
    ['across', '+1/2', -114_300],
    ['across', '0', 0],
  ] as const)('sets %s from %j', (name, written, um) => {
    expect(typedReading(written, 'in', present(name))).toEqual({ ok: true, um });
  });

  it.each([
    ['1 1/4', -31_750],
    ['+1/8', -28_575],
    ['-1/2', 12_700],
  ] as const)('takes a drop that is measured up as it is said: %j', (written, um) => {
    const upwards = presentReading('drop', LEAF, group, 'up');
    expect(upwards.sign * upwards.um).toBe(25_400);
    expect(typedReading(written, 'in', upwards)).toEqual({ ok: true, um });
  });

  it.each([
    ['width', '', 'empty'],
    ['width', 'ten', 'notALength'],
    ['width', '3 1/0', 'divisionByZero'],
    ['width', '0', 'notPositive'],
    ['width', '-2', 'notPositive'],
    ['width', '1/8', 'tooSmall'],
    ['height', '1/16', 'tooSmall'],
    ['width', '61', 'tooLarge'],
    ['height', '55', 'tooLarge'],
    ['drop', '61', 'tooFar'],
    ['across', '-61', 'tooFar'],
    ['drop', '9999999', 'tooLong'],
  ] as const)('refuses %s %j: %s', (name, written, reason) => {
    expect(typedReading(written, 'in', present(name))).toEqual({ ok: false, reason });
  });
});

describe('a turn typed in degrees', () => {
  it.each([
    ['15', 1_500],
    ['-7,5°', -750],
    ['270', -9_000],
    ['+10', 5_500],
    ['360', 0],
    ['90 deg', 9_000],
  ])('reads %j', (written, turnCentideg) => {
    expect(typedTurn(written, 4_500)).toEqual({ ok: true, turnCentideg });
  });

  it('says what it cannot read', () => {
    expect(typedTurn('upside down', 0)).toEqual({ ok: false, reason: 'notATurn' });
    expect(typedTurn(' ', 0)).toEqual({ ok: false, reason: 'emptyTurn' });
  });

  it('shows a turn as it is typed', () => {
    expect([0, -0, 4_500, -750].map(turnValue)).toEqual(['0', '0', '45', '-7.5']);
  });
});
