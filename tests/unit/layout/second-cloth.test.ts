import { expect, it } from 'vitest';
import { GARMENT_KINDS } from '@/lib/domain/garment/kinds';
import { hasSecondCloth } from '@/lib/domain/layout/second-cloth';

it('only a raglan has sleeves and collar of a second cloth', () => {
  expect(GARMENT_KINDS.filter(hasSecondCloth)).toEqual(['raglan']);
});
