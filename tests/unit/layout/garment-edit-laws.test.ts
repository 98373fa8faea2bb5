import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hangBlank, takeDownBlank } from '@/lib/domain/layout/blank-edits';
import {
  emptyLayout,
  type GarmentBlank,
  type LayoutDocument,
  layoutDocumentSchema,
} from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import { removeGarment, restyleGarment, setCounts, sizesWithoutGroup } from '@/lib/domain/layout/garment-edits';
import { LOCATION_IDS } from '@/lib/domain/layout/locations';
import { restacked } from '@/lib/domain/layout/stack';
import { takeChart } from '@/lib/domain/layout/take-chart';
import { tradeStepUm } from '@/lib/domain/measure/length';
import { hung, newId, printed, withHung } from './hung-sample';

const CHART_IDS = [
  'crew-tee-adult',
  'crew-tee-youth',
  'crew-tee-toddler',
  'zip-hood-adult',
  'zip-hood-youth',
  'tote-adult',
];
// Measuring a chart takes longer than everything else here.
const blanks = new Map(CHART_IDS.map((id) => [id, hung(id)]));

function blankOf(chartId: string, shopBlankId?: string): GarmentBlank {
  const blank = blanks.get(chartId);
  if (!blank) throw new Error(`no chart ${chartId}`);
  return { ...blank, blankId: newId(), ...(shopBlankId !== undefined && { shopBlankId }) };
}

const pick = fc.nat({ max: 40 });
const chartId = fc.constantFrom(...CHART_IDS);
const shopBlankId = fc.option(fc.constantFrom('own 1', 'own 2'), { nil: undefined });
const step = fc.oneof(
  fc.record({ kind: fc.constant('add' as const), chartId, shopBlankId }),
  fc.record({ kind: fc.constant('hang' as const), at: pick, chartId, shopBlankId }),
  fc.record({ kind: fc.constant('hang' as const), at: pick, chartId, shopBlankId }),
  fc.record({ kind: fc.constant('takeDown' as const), at: pick, which: pick }),
  fc.record({
    kind: fc.constant('print' as const),
    at: pick,
    also: pick,
    locationId: fc.constantFrom(...LOCATION_IDS),
  }),
  fc.record({
    kind: fc.constant('print' as const),
    at: pick,
    also: pick,
    locationId: fc.constantFrom(...LOCATION_IDS),
  }),
  fc.record({ kind: fc.constant('count' as const), at: pick, which: pick, quantity: fc.nat({ max: 9 }) }),
  fc.record({
    kind: fc.constant('takeChart' as const),
    at: pick,
    which: pick,
    drops: pick,
    adds: fc.boolean(),
    renews: fc.boolean(),
  }),
  fc.record({ kind: fc.constant('restyle' as const), at: pick }),
  fc.record({ kind: fc.constant('remove' as const), at: pick }),
);
type Step = typeof step extends fc.Arbitrary<infer Each> ? Each : never;

function nth<Each>(all: readonly Each[], index: number): Each | undefined {
  return all[index % Math.max(1, all.length)];
}

function next(layout: LayoutDocument, step: Step): LayoutDocument {
  if (step.kind === 'add') {
    if (layout.garments.length >= 6) return layout;
    return withHung(layout, newId(), blankOf(step.chartId, step.shopBlankId));
  }
  const garment = nth(layout.garments, step.at);
  if (!garment) return layout;
  const { garmentId } = garment;
  const outcome = (result: ReturnType<typeof hangBlank>) => (result.ok ? result.layout : layout);
  switch (step.kind) {
    case 'hang':
      return outcome(hangBlank(layout, garmentId, blankOf(step.chartId, step.shopBlankId), newId));
    case 'takeDown':
      return outcome(takeDownBlank(layout, garmentId, nth(garment.blanks, step.which)?.blankId ?? ''));
    case 'print': {
      const also = nth(layout.garments, step.also)?.garmentId ?? garmentId;
      return printed(layout, step.locationId, [...new Set([garmentId, also])]);
    }
    case 'count': {
      const blank = nth(garment.blanks, step.which);
      const size = blank && nth(blank.sizes, step.quantity);
      if (!size) return layout;
      return setCounts(layout, garmentId, [{ blankId: blank.blankId, sizeId: size.sizeId, quantity: step.quantity }]);
    }
    case 'takeChart': {
      const blank = nth(garment.blanks, step.which);
      return blank ? outcome(takeChart(layout, garmentId, changedChart(blank, step), newId)) : layout;
    }
    case 'restyle':
      return restyleGarment(layout, garmentId, {
        name: 'Other',
        cloth: { name: 'Red', hex: '#B4282E', heather: true },
      });
    case 'remove':
      return removeGarment(layout, garmentId);
  }
}

function changedChart(
  blank: GarmentBlank,
  { drops, adds, renews }: { drops: number; adds: boolean; renews: boolean },
): GarmentBlank {
  const kept = blank.sizes.length > 1 ? blank.sizes.filter((_, index) => index !== drops) : blank.sizes;
  const [first] = kept;
  const more = adds && first && kept.length < 20 ? [...kept, { ...first, sizeId: newId(), label: newId() }] : kept;
  return { ...blank, sizes: renews ? more.map((size) => ({ ...size, sizeId: newId() })) : more };
}

describe('any edits of garments and their blanks', () => {
  it('leave a whole document, with readings for every size of every print', () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 4, maxLength: 30 }), (steps) => {
        let layout = emptyLayout('Placed by hand.');
        for (const each of steps) {
          layout = restacked(layout, next(layout, each), tradeStepUm('in'));
          expect(layoutFault(layout), JSON.stringify(each)).toBeNull();
          expect(layout.prints.flatMap((print) => sizesWithoutGroup(layout, print))).toEqual([]);
        }
        expect(layoutDocumentSchema.parse(layout)).toEqual(layout);
      }),
      { numRuns: 300 },
    );
  });

  it('refuse without touching what they were given', () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 4, maxLength: 20 }), (steps) => {
        let layout = emptyLayout('Placed by hand.');
        for (const each of steps) {
          const before = structuredClone(layout);
          const after = next(layout, each);
          expect(layout).toEqual(before);
          layout = after;
        }
      }),
      { numRuns: 60 },
    );
  });
});
