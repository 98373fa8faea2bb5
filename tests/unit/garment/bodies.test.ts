import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import { completeMeasures, drawFlat } from '@/lib/domain/garment/kinds';
import type { MeasureName } from '@/lib/domain/garment/measures';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import { pathData } from '@/lib/domain/geometry/path';
import { mmFromUm } from '@/lib/domain/measure/length';
import bodies from '../../data/ansur2-bodies.json';
import designations from '../../data/en13402-3-size-designation.json';

// Bodies: ANSUR II (NATICK/TR-15/007, 2014), 4 082 men and 1 986 women. Letter codes: EN 13402-3. A generic tee on its own
// letter code has to go over the body that the code stands for; how much ease it leaves is common practice, no source: a code
// spans 8 to 12 cm of girth, so that one tee is close at its upper end (knit gives 2 cm) and easy at its lower.

const WHO = [
  { who: 'men', chart: 'crew-tee-adult', body: bodies.stats.male, codes: designations.men_chest },
  { who: 'women', chart: 'fitted-tee-adult', body: bodies.stats.female, codes: designations.women_bust },
] as const;

/** The letter code of a chest girth, cm. */
function codeOf(codes: Readonly<Record<string, string>>, girthCm: number): string {
  const found = Object.entries(codes).find(([, range]) => {
    const [from = 0, to = 0] = range.split('-').map(Number.parseFloat);
    return girthCm >= from && girthCm < to;
  });
  if (!found) throw new Error(`no letter code for ${girthCm} cm`);
  return found[0] === 'XXL' ? '2XL' : found[0];
}

function sizeOf(chartId: string, label: string) {
  const chart = starterChart(chartId);
  const size = chart?.sizes.find((each) => each.label === label);
  if (!chart || !size) throw new Error(`no ${label} in ${chartId}`);
  const completed = completeMeasures(chart.kind, size.entered);
  if (!completed.ok) throw new Error(completed.refusal.reason);
  const mm = (measure: MeasureName) => mmFromUm(completed.measures.um[measure] ?? Number.NaN);
  const lengthOf = (side: 'front' | 'back') => {
    const seam = drawFlat(chart.kind, completed.measures, side).lines.find(({ line }) => line === 'collarSeam');
    return new svgPathProperties(pathData(seam?.path ?? [])).getTotalLength();
  };
  return { mm, neckSeamMm: lengthOf('front') + lengthOf('back') };
}

describe.each(WHO)('a generic tee on the $who of ANSUR II', ({ chart, body, codes }) => {
  it.each(['p5', 'p50', 'p95'] as const)(
    'has -2 to 13 cm of ease at the chest of its letter code: %s',
    (percentile) => {
      const girthMm = body.chestcircumference[percentile];
      const easeMm = 2 * sizeOf(chart, codeOf(codes, girthMm / 10)).mm('chestWidth') - girthMm;
      expect(easeMm).toBeGreaterThanOrEqual(-20);
      expect(easeMm).toBeLessThanOrEqual(130);
    },
  );

  it('has shoulder seams that end between the shoulder bones and the outside of the arms', () => {
    const { mm } = sizeOf(chart, codeOf(codes, body.chestcircumference.p50 / 10));
    expect(mm('acrossShoulder')).toBeGreaterThanOrEqual(body.biacromialbreadth.p50);
    expect(mm('acrossShoulder')).toBeLessThanOrEqual(body.bideltoidbreadth.p50);
  });

  it('has a neck seam that goes round the base of the neck, drawn and measured along its curve', () => {
    const { neckSeamMm } = sizeOf(chart, codeOf(codes, body.chestcircumference.p50 / 10));
    expect(neckSeamMm).toBeGreaterThanOrEqual(body.neckcircumferencebase.p50);
    expect(neckSeamMm).toBeLessThanOrEqual(body.neckcircumferencebase.p50 * 1.6);
  });

  it('has sleeves that go over the upper arm', () => {
    const { mm } = sizeOf(chart, codeOf(codes, body.chestcircumference.p50 / 10));
    expect(2 * mm('sleeveOpening')).toBeGreaterThanOrEqual(body.bicepscircumferenceflexed.p50);
    expect(2 * mm('sleeveOpening')).toBeLessThanOrEqual(body.bicepscircumferenceflexed.p50 * 1.4);
  });
});
