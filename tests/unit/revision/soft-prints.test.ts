import { describe, expect, it } from 'vitest';
import { setCounts } from '@/lib/domain/layout/garment-edits';
import { umFromInches } from '@/lib/domain/measure/length';
import { softPrints, softPrintsToDecide, withoutIdleSoftMarks } from '@/lib/domain/revision/soft-prints';
import { LEAF, teeWithPrints } from '../layout/sample-layout';

const unknown = () => null;
/** The leaf's ink is 600 px wide: fair to 3 in (common practice, no source: 200 px to a printed inch). */
const FAIR_IN = 3;

function atWidths(inches: readonly number[]) {
  const layout = teeWithPrints(['fullFront']);
  const [print] = layout.prints;
  if (!print || print.sizeGroups.length < inches.length) throw new Error('too few size groups');
  const sizeGroups = print.sizeGroups.map((group, index) => ({
    ...group,
    widthUm: umFromInches(inches[index] ?? FAIR_IN),
  }));
  return { ...layout, prints: [{ ...print, sizeGroups }] };
}

describe('prints that come out soft', () => {
  it('are those with under 200 pixels to an inch on some size', () => {
    expect(softPrints(atWidths([FAIR_IN]), unknown)).toEqual([]);
    expect(softPrints(atWidths([FAIR_IN, 4]), unknown)).toMatchObject([
      { widthUm: umFromInches(4), pxPerInch: 150, fairUm: umFromInches(3) },
    ]);
  });

  it('count real detail only', () => {
    const enlarged = (sha256: string) => (sha256 === LEAF.sha256 ? { detailShare: 0.5 } : null);
    expect(softPrints(atWidths([FAIR_IN]), enlarged)).toMatchObject([{ pxPerInch: 100, fairUm: umFromInches(1.5) }]);
  });

  it('do not count sizes that nobody ordered', () => {
    const layout = atWidths([5]);
    const [soft, fair] = layout.prints[0]?.sizeGroups ?? [];
    const [softSize] = soft?.members ?? [];
    const [fairSize] = fair?.members ?? [];
    if (!(softSize && fairSize)) throw new Error('two size groups with sizes are needed');
    expect(softPrints(setCounts(layout, 'tee', [{ ...fairSize, quantity: 3 }]), unknown)).toEqual([]);
    expect(softPrints(setCounts(layout, 'tee', [{ ...softSize, quantity: 3 }]), unknown)).toHaveLength(1);
  });

  it('are to be decided until the maker goes ahead, and keep the mark only while they are soft', () => {
    const marked = (inches: number) => {
      const layout = atWidths([inches]);
      return { ...layout, prints: layout.prints.map((print) => ({ ...print, goAheadSoft: true as const })) };
    };
    expect(softPrintsToDecide(atWidths([4]), unknown)).toHaveLength(1);
    expect(softPrintsToDecide(marked(4), unknown)).toEqual([]);
    expect(withoutIdleSoftMarks(marked(4), unknown).prints[0]).toHaveProperty('goAheadSoft', true);
    expect(withoutIdleSoftMarks(marked(3), unknown).prints[0]).not.toHaveProperty('goAheadSoft');
  });
});
