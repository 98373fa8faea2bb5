import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freezeFlat } from '@/lib/domain/garment/flat';
import { completeMeasures, drawFlat, sidesOf } from '@/lib/domain/garment/kinds';
import type { EnteredMeasures, MeasureName, Measures } from '@/lib/domain/garment/measures';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import { mmFromUm, umFromMm } from '@/lib/domain/measure/length';
import { measuredAgain, TEE_MEASURES } from './drawn-measures';

/** How far a measure taken again may be off, mm. */
const WITHIN_MM = 0.5;

const sizes = STARTER_CHARTS.flatMap((chart) =>
  chart.sizes.map((size) => ({ name: `${chart.id} ${size.label}`, size })),
);

function complete(entered: EnteredMeasures): Measures {
  const completed = completeMeasures('crewTee', entered);
  if (!completed.ok) throw new Error(`${completed.refusal.reason}: ${completed.refusal.measure}`);
  return completed.measures;
}

function mm({ um }: Measures, measure: MeasureName): number {
  return mmFromUm(um[measure] ?? Number.NaN);
}

function expectEveryMeasureBack(measures: Measures): void {
  const again = measuredAgain(drawFlat('crewTee', measures, 'front'), drawFlat('crewTee', measures, 'back'));
  for (const measure of TEE_MEASURES) {
    const entered = mm(measures, measure);
    const error = Math.abs(again[measure] - entered);
    expect(error, `${measure}: drawn ${again[measure]}, entered ${entered} mm`).toBeLessThanOrEqual(WITHIN_MM);
  }
}

describe('a drawn crew tee', () => {
  it.each(sizes)('gives back every measure of $name', ({ size }) => {
    expectEveryMeasureBack(complete(size.entered));
  });

  it('gives back every measure that is entered, whatever it is', () => {
    const share = fc.double({ min: 0.8, max: 1.2, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 300, max: 900 }),
        fc.record(Object.fromEntries(TEE_MEASURES.map((name) => [name, share]))),
        (chestMm, shares) => {
          const entered = {
            chestWidth: umFromMm(chestMm),
            bodyLength: umFromMm(chestMm * 1.35),
            sleeveLength: umFromMm(180),
          };
          const usual = complete(entered).um;
          const varied = Object.fromEntries(
            TEE_MEASURES.map((name) => [name, Math.round((usual[name] ?? 0) * (shares[name] ?? 1))]),
          ) as EnteredMeasures;
          const completed = completeMeasures('crewTee', varied);
          fc.pre(completed.ok);
          if (completed.ok) expectEveryMeasureBack(completed.measures);
        },
      ),
      { numRuns: 40 },
    );
  });

  it.each(sizes)('is the same left and right in $name', ({ size }) => {
    for (const side of sidesOf('crewTee')) {
      const { box } = drawFlat('crewTee', complete(size.entered), side);
      expect(box.x + box.width).toBeCloseTo(-box.x, 6);
    }
  });

  it('keeps what was entered and names what was estimated', () => {
    const { um, estimated } = complete({ ...sizes[0]?.size.entered, neckWidth: umFromMm(170) });
    expect(um.neckWidth).toBe(umFromMm(170));
    expect(estimated).not.toContain('neckWidth');
    expect(estimated).toContain('armhole');
  });

  it('is frozen to a micrometre', () => {
    const flat = drawFlat('crewTee', complete(sizes[3]?.size.entered ?? {}), 'front');
    const frozen = freezeFlat(flat);
    expect(
      Math.abs((frozen.points.collarSeamCentre?.y ?? Number.NaN) - (flat.points.collarSeamCentre?.y ?? 0)),
    ).toBeLessThanOrEqual(0.0005);
    expect(frozen.lines.map(({ line }) => line)).toEqual(flat.lines.map(({ line }) => line));
    for (const number of frozen.outline.match(/-?[\d.]+/g) ?? []) expect(number).toMatch(/^-?\d+(\.\d{1,3})?$/);
  });

  it.each([
    [{ bodyLength: 700_000, chestWidth: 500_000 }, 'missing', 'sleeveLength'],
    [{ bodyLength: 700_000, chestWidth: 5_000, sleeveLength: 200_000 }, 'outOfRange', 'chestWidth'],
    [{ bodyLength: 1_600_000, chestWidth: 500_000, sleeveLength: 200_000 }, 'outOfRange', 'bodyLength'],
    [
      { bodyLength: 700_000, chestWidth: 500_000, sleeveLength: 200_000, neckWidth: 600_000 },
      'neckWiderThanShoulders',
      'neckWidth',
    ],
    [{ bodyLength: 1_000_000, chestWidth: 320_000, sleeveLength: 200_000 }, 'tooLongForWidth', 'bodyLength'],
    [{ bodyLength: 230_000, chestWidth: 500_000, sleeveLength: 200_000 }, 'armholeBelowHem', 'armhole'],
    [
      { bodyLength: 700_000, chestWidth: 500_000, sleeveLength: 200_000, armhole: 10_000 },
      'shouldersWiderThanReach',
      'armhole',
    ],
  ] as const)('refuses measures %o: %s (%s)', (entered, reason, measure) => {
    expect(completeMeasures('crewTee', entered)).toEqual({ ok: false, refusal: { reason, measure } });
  });
});
