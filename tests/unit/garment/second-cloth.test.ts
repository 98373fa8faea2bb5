import { expect, it } from 'vitest';
import { hasSecondCloth } from '@/lib/domain/garment/blank-style';
import { completeMeasures, drawFlat, GARMENT_KINDS, type GarmentKind } from '@/lib/domain/garment/kinds';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';

function isDrawnWithSecond(kind: GarmentKind): boolean {
  const entered = STARTER_CHARTS.find((chart) => chart.kind === kind)?.sizes[0]?.entered ?? {};
  const completed = completeMeasures(kind, entered);
  if (!completed.ok) throw new Error(`${kind}: ${completed.refusal.reason}`);
  return drawFlat(kind, completed.measures, 'front').parts.some(({ second }) => second === true);
}

it('a raglan is of two cloths, everything else of one, as their flats are drawn', () => {
  expect(GARMENT_KINDS.filter(hasSecondCloth)).toEqual(['raglan']);
  expect(GARMENT_KINDS.filter(isDrawnWithSecond)).toEqual(['raglan']);
});
