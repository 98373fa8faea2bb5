import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LayoutDocument, Print } from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import type { LocationId } from '@/lib/domain/layout/locations';
import { keyOf, offeredSizes } from '@/lib/domain/layout/sizes';
import { letGo, restacked, USUAL_GAP_UM } from '@/lib/domain/layout/stack';
import { gapOnSize } from '@/lib/domain/layout/stack-drops';
import { canKeepUnder } from '@/lib/domain/layout/stack-order';
import { umFromInches } from '@/lib/domain/measure/length';
import { teeWithPrints } from './sample-layout';

const STEP_UM = umFromInches(1 / 8);

function printOf(layout: LayoutDocument, printId: string): Print {
  const print = layout.prints.find((each) => each.printId === printId);
  if (!print) throw new Error(`no print ${printId}`);
  return print;
}

function changed(layout: LayoutDocument, printId: string, change: (print: Print) => Print): LayoutDocument {
  return { ...layout, prints: layout.prints.map((print) => (print.printId === printId ? change(print) : print)) };
}

/** A tee with the second print kept under the first. */
function stackOf(upper: LocationId, lower: LocationId, gapUm = USUAL_GAP_UM): LayoutDocument {
  const start = teeWithPrints([upper, lower]);
  const kept = changed(start, lower, (print) => ({ ...print, below: { printId: upper, gapUm } }));
  return restacked(start, kept, STEP_UM);
}

function gaps(layout: LayoutDocument, upper: string, lower: string): number[] {
  return layout.garments
    .flatMap(offeredSizes)
    .map((offered) => gapOnSize(printOf(layout, upper), printOf(layout, lower), offered));
}

describe('a print kept under another', () => {
  // Common practice, no source: a number starts an inch under its name.
  it('starts so for a number that comes to a back with a name on it', () => {
    const name = teeWithPrints(['upperBack']);
    const both = teeWithPrints(['upperBack', 'backNumber']);
    const after = restacked(name, { ...both, prints: [...name.prints, printOf(both, 'backNumber')] }, STEP_UM);
    expect(printOf(after, 'backNumber').below).toEqual({ printId: 'upperBack', gapUm: umFromInches(1) });
    for (const gap of gaps(after, 'upperBack', 'backNumber')) {
      expect(Math.abs(gap - umFromInches(1))).toBeLessThanOrEqual(STEP_UM / 2);
    }
  });

  it('keeps its gap on every size, whatever becomes of the one above', () => {
    const edits = fc.array(
      fc.record({
        group: fc.nat({ max: 3 }),
        widthUm: fc.integer({ min: 40_000, max: 350_000 }),
        dropUm: fc.integer({ min: 0, max: 200_000 }),
        turnCentideg: fc.integer({ min: -9_000, max: 9_000 }),
      }),
      { minLength: 1, maxLength: 4 },
    );
    const pairs = fc.constantFrom(
      ['upperBack', 'backNumber'] as const,
      ['centreChest', 'frontNumber'] as const,
      ['leftChest', 'frontNumber'] as const,
    );
    fc.assert(
      fc.property(pairs, fc.integer({ min: 0, max: 60_000 }), edits, ([upper, lower], gapUm, all) => {
        let layout = stackOf(upper, lower, gapUm);
        for (const { group, turnCentideg, ...readings } of all) {
          const next = changed(layout, upper, (print) => ({
            ...print,
            turnCentideg,
            sizeGroups: print.sizeGroups.map((each, index) =>
              index === group % print.sizeGroups.length ? { ...each, ...readings } : each,
            ),
          }));
          layout = restacked(layout, next, STEP_UM);
          expect(layoutFault(layout)).toBeNull();
          expect(printOf(layout, lower).below?.gapUm).toBe(gapUm);
          for (const gap of gaps(layout, upper, lower)) {
            expect(Math.abs(gap - gapUm)).toBeLessThanOrEqual(STEP_UM / 2 + 2);
          }
        }
      }),
      { numRuns: 30 },
    );
  }, 30_000);

  it('comes back to the groups it had when the one above comes back', () => {
    const start = stackOf('upperBack', 'backNumber');
    const { sizeGroups } = printOf(start, 'upperBack');
    const away = restacked(
      start,
      changed(start, 'upperBack', (print) => ({
        ...print,
        sizeGroups: print.sizeGroups.flatMap((group) => {
          const [first, ...others] = group.members;
          if (!first) return [group];
          return [
            { ...group, members: [first], dropUm: group.dropUm + umFromInches(1) },
            { ...group, groupId: `${group.groupId}-rest`, members: others },
          ];
        }),
      })),
      STEP_UM,
    );
    expect(printOf(away, 'backNumber').sizeGroups.length).toBeGreaterThan(
      printOf(start, 'backNumber').sizeGroups.length,
    );
    const back = restacked(
      away,
      changed(away, 'upperBack', (print) => ({ ...print, sizeGroups })),
      STEP_UM,
    );
    const names = (layout: LayoutDocument) => printOf(layout, 'backNumber').sizeGroups.map(({ groupId }) => groupId);
    expect(names(back)).toEqual(names(start));
    expect(printOf(back, 'backNumber').sizeGroups.map(({ dropUm }) => dropUm)).toEqual(
      printOf(start, 'backNumber').sizeGroups.map(({ dropUm }) => dropUm),
    );
  });

  it('takes a new gap when it is moved itself, on all sizes, and none less than nothing', () => {
    const start = stackOf('upperBack', 'backNumber');
    const lower = (byUm: number) =>
      restacked(
        start,
        changed(start, 'backNumber', (print) => ({
          ...print,
          sizeGroups: print.sizeGroups.map((group, index) =>
            index === 0 ? { ...group, dropUm: group.dropUm + byUm } : group,
          ),
        })),
        STEP_UM,
      );
    const [first] = gaps(start, 'upperBack', 'backNumber');
    const down = lower(umFromInches(1 / 2));
    expect(printOf(down, 'backNumber').below?.gapUm).toBe((first ?? 0) + umFromInches(1 / 2));
    for (const gap of gaps(down, 'upperBack', 'backNumber')) {
      expect(Math.abs(gap - (first ?? 0) - umFromInches(1 / 2))).toBeLessThanOrEqual(STEP_UM / 2 + 2);
    }
    const up = lower(-umFromInches(4));
    expect(printOf(up, 'backNumber').below?.gapUm).toBe(0);
    expect(Math.min(...gaps(up, 'upperBack', 'backNumber'))).toBeGreaterThanOrEqual(-STEP_UM / 2 - 2);
  });

  it('is let go when the one above is gone or on another side, and stays where it was', () => {
    const start = stackOf('upperBack', 'backNumber');
    const gone = restacked(
      start,
      { ...start, prints: start.prints.filter(({ printId }) => printId !== 'upperBack') },
      STEP_UM,
    );
    expect(printOf(gone, 'backNumber')).toEqual(letGo(printOf(start, 'backNumber')));
    const front = changed(start, 'upperBack', (print) => ({ ...print, side: 'front', locationId: 'fullFront' }));
    expect(printOf(restacked(start, front, STEP_UM), 'backNumber').below).toBeUndefined();
  });

  it('stays as it is, object and all, where nothing above it moved', () => {
    const start = stackOf('upperBack', 'backNumber');
    const renamed = changed(start, 'upperBack', (print) => ({ ...print, name: 'Name' }));
    expect(restacked(start, renamed, STEP_UM)).toBe(renamed);
    expect(restacked(start, start, STEP_UM)).toBe(start);
  });

  it('goes down a whole stack, and round in no circle', () => {
    const start = teeWithPrints(['upperBack', 'fullBack', 'backNumber']);
    const under = (layout: LayoutDocument, printId: string, above: string) =>
      changed(layout, printId, (print) => ({ ...print, below: { printId: above, gapUm: 10_000 } }));
    const kept = under(under(start, 'fullBack', 'upperBack'), 'backNumber', 'fullBack');
    const stack = restacked(start, kept, STEP_UM);
    expect(canKeepUnder(stack, printOf(stack, 'upperBack'), printOf(stack, 'backNumber'))).toBe(false);
    const lowered = changed(stack, 'upperBack', (print) => ({
      ...print,
      sizeGroups: print.sizeGroups.map((group) => ({ ...group, dropUm: group.dropUm + umFromInches(1) })),
    }));
    const after = restacked(stack, lowered, STEP_UM);
    const drops = (layout: LayoutDocument, printId: string) =>
      layout.garments.flatMap(offeredSizes).map((offered) => {
        const key = keyOf(offered);
        return printOf(layout, printId).sizeGroups.find(({ members }) =>
          members.some(({ blankId, sizeId }) => blankId === key.blankId && sizeId === key.sizeId),
        )?.dropUm;
      });
    expect(drops(after, 'backNumber')).toEqual(
      drops(stack, 'backNumber').map((dropUm) => (dropUm ?? 0) + umFromInches(1)),
    );
    const circle = under(stack, 'upperBack', 'backNumber');
    expect(layoutFault(restacked(stack, circle, STEP_UM))).toBeNull();
  });
});
