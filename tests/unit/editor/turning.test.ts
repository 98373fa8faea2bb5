import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normaliseTurn } from '@/lib/domain/measure/angle';
import { turnByHand, turnByStep } from '@/lib/editor/turning';

const turns = fc.integer({ min: -17_999, max: 18_000 });
const middle = { x: 120, y: -40 };

/** A place 60 mm from the middle, at an angle clockwise from the right. */
function at(centideg: number) {
  const angle = (centideg / 18_000) * Math.PI;
  return { x: middle.x + 60 * Math.cos(angle), y: middle.y + 60 * Math.sin(angle) };
}

/** How far two turns are from each other, the short way round. */
const apart = (a: number, b: number) => Math.abs(normaliseTurn(a - b));

describe('turning by hand', () => {
  it('follows the pointer round the middle while nothing settles', () => {
    fc.assert(
      fc.property(turns, turns, turns, (start, from, by) => {
        const turned = turnByHand(start, middle, { from: at(from), to: at(from + by) }, 'free');
        expect(apart(turned, start + by)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('settles on whole degrees, on quarter turns when near, and on every 15° with Shift', () => {
    fc.assert(
      fc.property(turns, turns, (start, by) => {
        const hand = { from: at(0), to: at(by) };
        const degrees = turnByHand(start, middle, hand, 'degrees');
        expect(Math.abs(degrees % 100)).toBe(0);
        expect(apart(degrees, start + by)).toBeLessThanOrEqual(250);
        const fifteens = turnByHand(start, middle, hand, 'fifteens');
        expect(Math.abs(fifteens % 1_500)).toBe(0);
        expect(apart(fifteens, start + by)).toBeLessThanOrEqual(751);
      }),
    );
    expect(turnByHand(0, middle, { from: at(0), to: at(8_800) }, 'degrees')).toBe(9_000);
  });

  it('stays as it was while the pointer is on the middle', () => {
    expect(turnByHand(1_234, middle, { from: at(0), to: middle }, 'degrees')).toBe(1_234);
  });
});

describe('turning by keys', () => {
  it('goes on to the next step that way, and back again', () => {
    expect(turnByStep(700, 1, 'degrees')).toBe(800);
    expect(turnByStep(700, 1, 'fifteens')).toBe(1_500);
    expect(turnByStep(700, -1, 'fifteens')).toBe(0);
    expect(turnByStep(1_500, -1, 'fifteens')).toBe(0);
    expect(turnByStep(18_000, 1, 'degrees')).toBe(-17_900);
  });
});
