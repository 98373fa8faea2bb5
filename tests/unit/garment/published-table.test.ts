import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import { completeMeasures, drawFlat } from '@/lib/domain/garment/kinds';
import type { MeasureName } from '@/lib/domain/garment/measures';
import { pathData } from '@/lib/domain/geometry/path';
import { umFromMm } from '@/lib/domain/measure/length';
import teagan from '../../data/freesewing-teagan-tee-dimensions.json';
import { measuredAgain } from './drawn-measures';

/**
 * Source: the finished garment of @freesewing/teagan 4.10.2 on the bodies of @freesewing/models 4.10.2 (MIT), an open
 * sewing pattern of a T-shirt. The table is entered as a shop would enter a supplier's, and taken again on the drawing with
 * svg-path-properties, which had no part in drawing it.
 */
const WITHIN_MM = 0.5;

type Row = (typeof teagan.rows)[number]['garment_mm'];

/** The table's columns that are measures of ours, as they are. */
const COLUMNS: Readonly<Partial<Record<MeasureName, keyof Row>>> = {
  chestWidth: 'chestWidthFlat',
  hemWidth: 'hemWidthFlat',
  bodyLength: 'bodyLengthHpsToHem',
  acrossShoulder: 'shoulderWidth',
  neckWidth: 'neckWidthHpsToHps',
  frontNeckDrop: 'frontNeckDropFromHps',
  backNeckDrop: 'backNeckDropFromHps',
  sleeveOpening: 'sleeveHemWidthFlat',
};
/** The table has no sleeve length; this is a usual one. */
const SLEEVE_MM = 205;
/** Fall of the shoulder seam a unit of run; a shop's tape would find it on the garment (common practice, no source). */
const SHOULDER_SLOPE = 0.364;

/** The armhole straight from point to point, from the depth below the high point of the shoulder that the table gives. */
function armholeMm({ armholeDepthFromHps, chestWidthFlat, shoulderWidth, neckWidthHpsToHps }: Row): number {
  const shoulderFall = SHOULDER_SLOPE * ((shoulderWidth - neckWidthHpsToHps) / 2);
  return Math.hypot((chestWidthFlat - shoulderWidth) / 2, armholeDepthFromHps - shoulderFall);
}

describe('a tee drawn from a published table of finished measures', () => {
  it.each(teagan.rows)('returns the table: $model', ({ garment_mm: row }) => {
    const columns = Object.entries(COLUMNS) as [MeasureName, keyof Row][];
    const completed = completeMeasures('crewTee', {
      ...Object.fromEntries(columns.map(([measure, column]) => [measure, umFromMm(row[column])])),
      sleeveLength: umFromMm(SLEEVE_MM),
      armhole: umFromMm(armholeMm(row)),
    });
    if (!completed.ok) throw new Error(`${completed.refusal.reason}: ${completed.refusal.measure}`);
    const flats = (['front', 'back'] as const).map((side) => drawFlat('crewTee', completed.measures, side));
    const taken = flats.flatMap(measuredAgain);
    for (const [measure, column] of columns) {
      const again = taken.filter((each) => each.measure === measure);
      expect(again, measure).not.toEqual([]);
      for (const { mm, side } of again) {
        expect(Math.abs(mm - row[column]), `${measure}, ${side}`).toBeLessThanOrEqual(WITHIN_MM);
      }
    }
    for (const { lines } of flats) {
      const armhole = lines.find(({ line }) => line === 'armhole');
      const drawn = new svgPathProperties(pathData(armhole?.path ?? []));
      const { y } = drawn.getPointAtLength(drawn.getTotalLength());
      expect(Math.abs(y - row.armholeDepthFromHps), 'depth of the armhole').toBeLessThanOrEqual(WITHIN_MM);
    }
  });
});
