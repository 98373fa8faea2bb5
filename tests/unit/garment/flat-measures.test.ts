import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freezeFlat, pointOf } from '@/lib/domain/garment/flat';
import {
  completeMeasures,
  drawFlat,
  GARMENT_KINDS,
  type GarmentKind,
  kindMeasures,
  requiredMeasures,
  sidesOf,
} from '@/lib/domain/garment/kinds';
import { type EnteredMeasures, MEASURE_REFUSALS, type MeasureName, type Measures } from '@/lib/domain/garment/measures';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import { mmFromUm, umFromMm } from '@/lib/domain/measure/length';
import { measuredAgain } from './drawn-measures';
import { isSimple, outlineRing } from './rings';

/** How far a measure taken again may be off, mm. */
const WITHIN_MM = 0.5;

const sizes = STARTER_CHARTS.flatMap(({ id, kind, sizes: of }) =>
  of.map((size) => ({ name: `${id} ${size.label}`, kind, entered: size.entered })),
);

function complete(kind: GarmentKind, entered: EnteredMeasures): Measures {
  const completed = completeMeasures(kind, entered);
  if (!completed.ok) throw new Error(`${completed.refusal.reason}: ${completed.refusal.measure}`);
  return completed.measures;
}

function expectEveryMeasureBack(kind: GarmentKind, { um }: Measures): void {
  const flats = sidesOf(kind).map((side) => drawFlat(kind, { um }, side));
  const taken = flats.flatMap(measuredAgain);
  for (const measure of kindMeasures(kind)) {
    const again = taken.filter((each) => each.measure === measure);
    expect(again, `${kind} shows its ${measure} on no side`).not.toEqual([]);
    for (const { mm, side } of again) {
      const entered = mmFromUm(um[measure] ?? Number.NaN);
      const error = Math.abs(mm - entered);
      expect(error, `${kind}, ${measure} on ${side}: drawn ${mm}, entered ${entered} mm`).toBeLessThanOrEqual(
        WITHIN_MM,
      );
    }
  }
}

/**
 * A size of some kind as somebody might type it: what its chart must give, and any of the other measures, each as usual
 * times a share of its own. Plausible and not, in the same size.
 */
const oddSizes = fc.constantFrom(...sizes).chain(({ kind, entered }) => {
  const required = requiredMeasures(kind);
  const share = fc.double({ min: 0.6, max: 1.6, noNaN: true });
  return fc
    .record(
      Object.fromEntries(
        kindMeasures(kind).map((name) => [name, required.includes(name) ? share : fc.option(share, { nil: null })]),
      ),
    )
    .map((shares: Partial<Record<MeasureName, number | null>>) => {
      const usual = complete(kind, entered).um;
      const typed = kindMeasures(kind).flatMap((name) => {
        const times = shares[name];
        return times ? [[name, Math.round((usual[name] ?? 0) * times)]] : [];
      });
      return { kind, entered: Object.fromEntries(typed) as EnteredMeasures };
    });
});

describe('a drawn flat', () => {
  it.each(sizes)('gives back every measure of $name', ({ kind, entered }) => {
    expectEveryMeasureBack(kind, complete(kind, entered));
  });

  it('gives back every measure that is entered, whatever it is, or the size is refused', () => {
    fc.assert(
      fc.property(oddSizes, ({ kind, entered }) => {
        const completed = completeMeasures(kind, entered);
        fc.pre(completed.ok);
        if (completed.ok) expectEveryMeasureBack(kind, completed.measures);
      }),
      { numRuns: 60 },
    );
  });

  it('has an outline of real numbers that never crosses itself, or the size is refused with a reason', () => {
    fc.assert(
      fc.property(oddSizes, ({ kind, entered }) => {
        const completed = completeMeasures(kind, entered);
        if (!completed.ok) {
          expect(MEASURE_REFUSALS).toContain(completed.refusal.reason);
          expect(kindMeasures(kind)).toContain(completed.refusal.measure);
          return;
        }
        for (const side of sidesOf(kind)) {
          const frozen = freezeFlat(drawFlat(kind, completed.measures, side));
          expect(JSON.stringify(frozen)).not.toMatch(/NaN|Infinity|null/);
          expect(isSimple(outlineRing(frozen)), `${kind} ${side}: ${JSON.stringify(completed.measures.um)}`).toBe(true);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('is frozen to a micrometre', () => {
    const flat = drawFlat('crewTee', complete('crewTee', sizes[3]?.entered ?? {}), 'front');
    const frozen = freezeFlat(flat);
    const off = pointOf(frozen, 'collarSeamCentre').y - pointOf(flat, 'collarSeamCentre').y;
    expect(Math.abs(off)).toBeLessThanOrEqual(0.0005);
    expect(frozen.lines.map(({ line }) => line)).toEqual(flat.lines.map(({ line }) => line));
    for (const number of frozen.outline.match(/-?[\d.]+/g) ?? []) expect(number).toMatch(/^-?\d+(\.\d{1,3})?$/);
  });

  it('is drawn for every kind, from nothing but the measures its chart must give', () => {
    for (const kind of GARMENT_KINDS) {
      const chart = STARTER_CHARTS.find((each) => each.kind === kind);
      expect(Object.keys(chart?.sizes[0]?.entered ?? {}).sort(), kind).toEqual([...requiredMeasures(kind)].sort());
    }
  });

  it('says which place a side does not have', () => {
    const bag = drawFlat('tote', complete('tote', { panelWidth: 380_000, panelHeight: 400_000 }), 'front');
    expect(() => pointOf(bag, 'collarSeamCentre')).toThrow(/collarSeamCentre/);
    expect(() => drawFlat('tote', { um: {} }, 'leftSleeve')).toThrow(/leftSleeve/);
  });
});

describe('sleeves laid on their own', () => {
  it('begin at the end of the shoulder and hang their hem on the fold, wherever a tape measures up from', () => {
    for (const { kind, entered } of sizes.filter((each) => sidesOf(each.kind).includes('leftSleeve'))) {
      const measures = complete(kind, entered);
      for (const side of ['leftSleeve', 'rightSleeve'] as const) {
        const { x, y } = pointOf(drawFlat(kind, measures, side), 'sleeveHemFold');
        expect([x, y]).toEqual([0, mmFromUm(measures.um.sleeveLength ?? 0)]);
      }
    }
  });
});

describe('completing measures', () => {
  it('keeps what was entered and names what was estimated', () => {
    const { um, estimated } = complete('crewTee', { ...sizes[0]?.entered, neckWidth: umFromMm(170) });
    expect(um.neckWidth).toBe(umFromMm(170));
    expect(estimated).not.toContain('neckWidth');
    expect(estimated).toContain('armhole');
  });

  it('leaves out measures that are of other kinds', () => {
    const { um } = complete('tote', { panelWidth: 380_000, panelHeight: 400_000, sleeveLength: 200_000 });
    expect(um).not.toHaveProperty('sleeveLength');
  });
});
