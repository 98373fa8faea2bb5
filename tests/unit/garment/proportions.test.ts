import { describe, expect, it } from 'vitest';
import { completeMeasures, drawFlat } from '@/lib/domain/garment/kinds';
import type { MeasureName } from '@/lib/domain/garment/measures';
import { LOCATIONS } from '@/lib/domain/layout/locations';
import { mmFromUm, umFromInches, umFromMm } from '@/lib/domain/measure/length';
import hands from '../../data/ansur2-hand-breadth.json';
import teagan from '../../data/freesewing-teagan-tee-dimensions.json';

/**
 * Source: @freesewing/teagan 4.10.2 on the adult bodies of @freesewing/models 4.10.2 (MIT), an open sewing pattern of a
 * T-shirt. Bands, not equalities: a pattern follows one body closely, a stock blank is cut fuller and for many.
 */
const BANDS: Partial<
  Record<MeasureName, { of: keyof (typeof teagan.rows)[number]['garment_mm']; from: number; to: number }>
> = {
  acrossShoulder: { of: 'shoulderWidth', from: 0.88, to: 1.15 },
  neckWidth: { of: 'neckWidthHpsToHps', from: 0.85, to: 1.3 },
  frontNeckDrop: { of: 'frontNeckDropFromHps', from: 0.8, to: 1.2 },
  backNeckDrop: { of: 'backNeckDropFromHps', from: 0.7, to: 1.3 },
  sleeveOpening: { of: 'sleeveHemWidthFlat', from: 0.8, to: 1.25 },
};

const adultRows = teagan.rows.filter(({ model }) => model.includes('Adult'));

describe('estimated proportions of a tee', () => {
  it.each(adultRows)(
    'stay within a band of the open pattern for a flat chest of $garment_mm.chestWidthFlat mm',
    (row) => {
      const completed = completeMeasures('crewTee', {
        chestWidth: umFromMm(row.garment_mm.chestWidthFlat),
        bodyLength: umFromMm(row.garment_mm.bodyLengthHpsToHem),
        sleeveLength: umFromInches(8),
      });
      if (!completed.ok) throw new Error(completed.refusal.reason);
      const { underarm } = drawFlat('crewTee', completed.measures, 'front').points;
      const depth = (underarm?.y ?? 0) / row.garment_mm.armholeDepthFromHps;
      expect(depth, 'depth of the armhole').toBeGreaterThanOrEqual(0.85);
      expect(depth, 'depth of the armhole').toBeLessThanOrEqual(1.15);
      for (const [measure, { of, from, to }] of Object.entries(BANDS)) {
        const ratio = mmFromUm(completed.measures.um[measure as MeasureName] ?? 0) / row.garment_mm[of];
        expect(ratio, measure).toBeGreaterThanOrEqual(from);
        expect(ratio, measure).toBeLessThanOrEqual(to);
      }
    },
  );

  it('lie a full front four fingers below the collar (ANSUR II, hand breadth, NATICK/TR-15/007)', () => {
    const adult = LOCATIONS.fullFront.starting.adult;
    const { male, female } = hands.stats;
    expect(mmFromUm(adult?.dropUm ?? 0)).toBeGreaterThanOrEqual(female.handbreadth.p5);
    expect(mmFromUm(adult?.dropUm ?? 0)).toBeLessThanOrEqual(male.handbreadth.p95);
  });
});
