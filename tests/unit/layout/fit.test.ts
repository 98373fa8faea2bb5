import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import { boxAround } from '@/lib/domain/geometry/box';
import type { Point } from '@/lib/domain/geometry/point';
import { type FitFinding, type FitRules, fitOnSize, isClear } from '@/lib/domain/layout/fit';
import { variesUm } from '@/lib/domain/layout/fit-cut';
import { gapUm } from '@/lib/domain/layout/fit-gaps';
import { blankFromChart } from '@/lib/domain/layout/garment-edits';
import { LOCATIONS, type LocationId } from '@/lib/domain/layout/locations';
import { flatOf } from '@/lib/domain/layout/scene';
import { umFromInches } from '@/lib/domain/measure/length';

const IN = 25.4;

/** Ink that fills a box given in inches: its middle from the centre line, its top from the flat's own origin, its width and height. */
function ink(middle: number, top: number, width: number, height: number) {
  const [left, right] = [(middle - width / 2) * IN, (middle + width / 2) * IN];
  const [head, foot] = [top * IN, (top + height) * IN];
  return inkOf([
    { x: left, y: head },
    { x: right, y: head },
    { x: right, y: foot },
    { x: left, y: foot },
  ]);
}

function inkOf(inkOutline: readonly Point[]) {
  return { inkOutline, inkBox: boxAround(inkOutline) };
}

function sizeOf(chartId: string, label: string) {
  const chart = starterChart(chartId);
  if (!chart) throw new Error(`no chart ${chartId}`);
  const blank = blankFromChart(chart, chartId, chartId, '');
  const size = blank.sizes.find((each) => each.label === label);
  if (!size) throw new Error(`${chartId} has no ${label}`);
  return { blank, size };
}

const NO_TOLERANCE = { acrossUm: 0, longUm: 0 };

function findings(
  chartId: string,
  label: string,
  locationId: LocationId,
  placed: ReturnType<typeof ink>,
  rules: Partial<FitRules> = {},
): FitFinding[] {
  const { blank, size } = sizeOf(chartId, label);
  const flat = flatOf(blank.kind, size, LOCATIONS[locationId].side);
  return fitOnSize(placed, flat, { locationId, cutToleranceUm: NO_TOLERANCE, ...rules });
}

const said = (all: readonly FitFinding[]) => all.map(({ kind, line }) => (line ? `${kind} ${line}` : kind));

describe('the room a line asks for', () => {
  // The two of these that are written down elsewhere; the rest of the table is common practice, no source.
  it('lets a print on the back of the neck sit 3/4 in from the collar, and no full back', () => {
    expect(gapUm('collarSeam', 'backNeck')).toBe(umFromInches(3 / 4));
    const under = ink(0, 1.2 + 0.8, 2.5, 2);
    expect(said(findings('crew-tee-adult', 'M', 'backNeck', under))).toEqual([]);
    expect(said(findings('crew-tee-adult', 'M', 'fullBack', under))).toEqual(['nearSeam collarSeam']);
  });

  it('lets no full front within 1 in of an armhole', () => {
    expect(gapUm('armhole', 'fullFront')).toBe(umFromInches(1));
    const wide = findings('crew-tee-adult', 'S', 'fullFront', ink(0, 7, 14.25, 4));
    expect(said(wide)).toEqual(['nearSeam armhole']);
    expect(wide[0]?.um).toBeLessThan(umFromInches(1));
    expect(wide[0]?.neededUm).toBe(umFromInches(1));
    expect(Math.abs(wide[0]?.at.x ?? 0)).toBeCloseTo((14.25 / 2) * IN, 6);
  });

  it('is said once for a line that runs on both sides, from the side that leaves less', () => {
    const towards = findings('crew-tee-adult', 'S', 'fullFront', ink(0.25, 7, 14, 4));
    expect(said(towards)).toEqual(['nearSeam armhole']);
    expect(towards[0]?.at.x).toBeGreaterThan(0);
  });
});

describe('what the cut varies', () => {
  const cut = { acrossUm: umFromInches(3 / 4), longUm: umFromInches(1) };

  // A centre line is known to half of the tolerance across: half the width's variation falls on each side.
  it('is half the tolerance across for a line beside the print, all of the tolerance along for one further down', () => {
    expect(variesUm('sideSeam', LOCATIONS.fullFront, cut)).toBe(umFromInches(3 / 8));
    expect(variesUm('armhole', LOCATIONS.fullFront, cut)).toBe(umFromInches(3 / 8));
    expect(variesUm('hem', LOCATIONS.fullFront, cut)).toBe(umFromInches(1));
    expect(variesUm('ribSeam', LOCATIONS.backNumber, cut)).toBe(umFromInches(1));
  });

  it('is nothing for a line that the tape starts from, or that moves with it', () => {
    expect(variesUm('collarSeam', LOCATIONS.fullFront, cut)).toBe(0);
    expect(variesUm('zip', LOCATIONS.leftChest, cut)).toBe(0);
    expect(variesUm('sleeveHem', LOCATIONS.leftSleeve, cut)).toBe(0);
    expect(variesUm('cuffSeam', LOCATIONS.leftSleeve, cut)).toBe(0);
    expect(variesUm('armhole', LOCATIONS.leftSleeve, cut)).toBe(umFromInches(1));
  });

  it('is said of ink that keeps its distance on the flat and may not on the garment', () => {
    // Its foot 3/4 in above the hem's rib, which the usual half inch allows.
    const { bodyLength = 0, hemRib = 0 } = sizeOf('crew-sweatshirt-youth', 'XS').size.measuresUm;
    const low = ink(0, (bodyLength - hemRib) / umFromInches(1) - 5.75, 6, 5);
    const free = findings('crew-sweatshirt-youth', 'XS', 'backNumber', low);
    const loose = findings('crew-sweatshirt-youth', 'XS', 'backNumber', low, { cutToleranceUm: cut });
    expect(said(free)).toEqual([]);
    expect(said(loose)).toEqual(['withinCut ribSeam']);
    expect(loose[0]?.um).toBeGreaterThanOrEqual(umFromInches(1 / 2));
    expect(loose[0]?.neededUm).toBe(umFromInches(1));
  });

  it('gives way to the threshold where that asks for more', () => {
    const near = findings('crew-tee-adult', 'S', 'fullFront', ink(0, 7, 14.25, 4), { cutToleranceUm: cut });
    expect(said(near)).toEqual(['nearSeam armhole']);
  });
});

describe('what a press cannot lie flat on', () => {
  it('counts a button or an eyelet that lies wholly under the ink', () => {
    const over = said(findings('polo-adult', 'M', 'leftChest', ink(0, 4.5, 3, 6)));
    expect(over).toContain('crossesSeam button');
    expect(over).toContain('crossesSeam placket');
  });

  it('says how far ink runs off the garment, and where', () => {
    // The side seam of an adult S is 9 in from the middle; the ink reaches 2 in past it, well under the sleeve.
    const [off] = findings('crew-tee-adult', 'S', 'fullFront', ink(6, 18, 10, 4));
    expect(off?.kind).toBe('offGarment');
    expect(off?.um ?? 0).toBeGreaterThan(umFromInches(1.9));
    expect(off?.um ?? 0).toBeLessThan(umFromInches(2.1));
    expect(off?.at.x).toBeCloseTo(11 * IN, 6);
  });

  it('sees ink that bridges a hollow of the edge though all its corners are on the cloth', () => {
    // Over the hollow of a tank's neck, from strap to strap.
    const bridge = findings('tank-adult', 'M', 'fullFront', ink(0, 1.2, 9.5, 0.4));
    expect(said(bridge)).toContain('offGarment');
  });

  it('is wider than the space between the armholes only when it runs past those of both sides', () => {
    const both = findings('tank-adult', 'S', 'fullFront', ink(0, 7, 16, 4));
    expect(said(both)).toContain('widerThanArmholes armhole');
    const oneSide = said(findings('tank-adult', 'S', 'fullFront', ink(3, 6, 8, 3)));
    expect(oneSide).toContain('crossesSeam armhole');
    expect(oneSide).not.toContain('widerThanArmholes armhole');
  });

  it('says how far past the armhole it runs, level along', () => {
    const wide = (inches: number) =>
      findings('crew-tee-adult', 'S', 'fullFront', ink(0, 7, inches, 2)).find(
        ({ kind }) => kind === 'widerThanArmholes',
      );
    const [narrow, wider] = [wide(17), wide(18)];
    expect((wider?.um ?? 0) - (narrow?.um ?? 0)).toBeCloseTo(umFromInches(1 / 2), -2);
    expect(narrow?.um ?? 0).toBeGreaterThan(0);
    expect(narrow?.um ?? 0).toBeLessThan(umFromInches(1));
  });

  it('asks a smaller platen where the shop says so', () => {
    const platenUm = { widthUm: umFromInches(9), heightUm: umFromInches(12) };
    const print = ink(0, 7, 10, 6);
    expect(said(findings('crew-tee-adult', 'L', 'fullFront', print))).toEqual([]);
    const [beyond] = findings('crew-tee-adult', 'L', 'fullFront', print, { platenUm });
    expect(beyond).toMatchObject({ kind: 'beyondPlaten', um: umFromInches(1) });
  });
});

describe('being clear', () => {
  it('is the same as having no finding, for any ink anywhere on any size', () => {
    const inches = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const chart = fc.constantFrom('crew-tee-adult', 'tank-adult', 'pullover-hood-adult', 'polo-adult');
    const size = fc.constantFrom('S', 'L', '3XL');
    let clear = 0;
    fc.assert(
      fc.property(
        chart,
        size,
        fc.tuple(inches(-8, 8), inches(-1, 24), inches(0.5, 17), inches(0.5, 21)),
        (id, label, [middle, top, width, height]) => {
          const { blank, size: of } = sizeOf(id, label);
          const flat = flatOf(blank.kind, of, 'front');
          const placed = ink(middle, top, width, height);
          const rules = { locationId: 'leftChest', cutToleranceUm: blank.cutToleranceUm } as const;
          const isClearThere = isClear(placed, flat, rules);
          expect(isClearThere).toBe(fitOnSize(placed, flat, rules).length === 0);
          if (isClearThere) clear += 1;
        },
      ),
      { numRuns: 100 },
    );
    expect(clear).toBeGreaterThan(3);
  });
});
