import { beforeEach, describe, expect, it } from 'vitest';
import { allowAttempt, forgetAttempts, secondsUntilAllowed } from '@/lib/server/limits/attempts';

const start = new Date('2026-09-01T10:00:00.000Z');
const minutesOn = (minutes: number) => new Date(start.getTime() + minutes * 60_000);
let next = 0;
let client: string;

// Addresses kept for documentation: RFC 5737 and RFC 3849.
beforeEach(() => {
  next += 1;
  client = `198.51.100.${next}`;
});

function tries(times: number, from = client, at = start) {
  return Array.from({ length: times }, () => allowAttempt('setUpCode', from, at));
}

describe('attempts', () => {
  it('are allowed five times with a set-up code, then refused until a quarter of an hour after the first', () => {
    expect(tries(7)).toEqual([true, true, true, true, true, false, false]);
    expect(secondsUntilAllowed('setUpCode', client, minutesOn(5))).toBe(600);
    expect(allowAttempt('setUpCode', client, minutesOn(14.9))).toBe(false);
    expect(secondsUntilAllowed('setUpCode', client, minutesOn(15))).toBe(0);
    expect(tries(6, client, minutesOn(15))).toEqual([true, true, true, true, true, false]);
  });

  it('are counted a client and a kind', () => {
    tries(6);
    expect(allowAttempt('setUpCode', '203.0.113.9', start)).toBe(true);
    expect(allowAttempt('wrongLink', client, start)).toBe(true);
  });

  it('are not counted by asking how long to wait', () => {
    for (let ask = 0; ask < 20; ask += 1) expect(secondsUntilAllowed('setUpCode', client, start)).toBe(0);
    expect(tries(5)).toEqual([true, true, true, true, true]);
  });

  it('are counted together for all addresses of an IPv6 /64, however they are written', () => {
    const same = [
      '2001:db8:1:2::1',
      '2001:DB8:1:2:ffff::',
      '2001:0db8:0001:0002:3:4:5:6',
      '2001:db8:1:2::',
      '2001:db8:1:2::9',
    ];
    expect(same.map((address) => allowAttempt('setUpCode', address, start))).toEqual([true, true, true, true, true]);
    expect(allowAttempt('setUpCode', '2001:db8:1:2:a:b:c:d', start)).toBe(false);
    expect(allowAttempt('setUpCode', '2001:db8:1:3::1', start)).toBe(true);
    expect(tries(5, '2001:db8::7').concat(tries(1, '2001:db8:0:0:1::'))).toEqual([true, true, true, true, true, false]);
  });

  it('are forgotten after one that was right', () => {
    tries(5);
    forgetAttempts('setUpCode', client);
    expect(allowAttempt('setUpCode', client, start)).toBe(true);
  });

  it('take no more memory however many strangers come', () => {
    for (let stranger = 0; stranger < 30_000; stranger += 1) allowAttempt('wrongLink', `stranger ${stranger}`, start);
    const holder = globalThis as { [slot: symbol]: { size: number } | undefined };
    expect(holder[Symbol.for('yokemark.attempts')]?.size).toBe(20_000);
  });
});
