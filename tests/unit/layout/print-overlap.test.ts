import { describe, expect, it } from 'vitest';
import type { Print } from '@/lib/domain/layout/document';
import { printOverlaps } from '@/lib/domain/layout/print-overlap';
import { umFromInches } from '@/lib/domain/measure/length';
import { teeWithPrints } from './sample-layout';

/** A tee with a crest at the left chest and a second print at a width, its middle so far across, at the same drop. */
function twoOnChest(acrossInches: number) {
  const layout = teeWithPrints(['leftChest', 'rightChest']);
  const [crest, other] = layout.prints as [Print, Print];
  const laid = (print: Print, acrossUm: number): Print => ({
    ...print,
    sizeGroups: print.sizeGroups.map((group) => ({
      ...group,
      widthUm: umFromInches(3),
      dropUm: umFromInches(6),
      acrossUm,
    })),
  });
  const prints = [laid(crest, umFromInches(4)), laid(other, umFromInches(acrossInches))];
  return { layout: { ...layout, prints }, garment: layout.garments[0] as (typeof layout.garments)[number], prints };
}

describe('prints that lie over each other', () => {
  it('are said with the sizes they do on', () => {
    const { layout, garment, prints } = twoOnChest(2);
    const [overlap, ...more] = printOverlaps(layout, garment, prints[0] as Print);
    expect(more).toEqual([]);
    expect(overlap?.other.printId).toBe('rightChest');
    expect(overlap?.sizes.length).toBe(garment.blanks.flatMap(({ sizes }) => sizes).length);
    // The leaf is slanted, so the way out is no longer than the inch that the two boxes share.
    expect(overlap?.mostUm).toBeGreaterThan(umFromInches(0.3));
    expect(overlap?.mostUm).toBeLessThanOrEqual(umFromInches(1));
  });

  it('are said of both', () => {
    const { layout, garment, prints } = twoOnChest(2);
    expect(printOverlaps(layout, garment, prints[1] as Print)[0]?.other.printId).toBe('leftChest');
  });

  it('are not said side by side', () => {
    const { layout, garment, prints } = twoOnChest(1);
    expect(printOverlaps(layout, garment, prints[0] as Print)).toEqual([]);
  });
});
