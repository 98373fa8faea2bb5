import { beforeAll, describe, expect, it } from 'vitest';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import type { LayoutDocument, Print } from '@/lib/domain/layout/document';
import { emptyLayout } from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import { addGarment, blankFromChart, startingPrint } from '@/lib/domain/layout/garment-edits';
import {
  fitSuggestions,
  printFit,
  stoppingFindings,
  troubledSizes,
  withOwnWidth,
} from '@/lib/domain/layout/layout-fit';
import { keyOf } from '@/lib/domain/layout/sizes';
import { umFromInches } from '@/lib/domain/measure/length';

const art = {
  artId: 'crest',
  sha256: '0'.repeat(64),
  widthPx: 1000,
  heightPx: 1000,
  inkBox: { x: 0, y: 0, width: 1000, height: 1000 },
  inkHull: [
    [0, 0],
    [1000, 0],
    [1000, 1000],
    [0, 1000],
  ] as [number, number][],
};

let layout: LayoutDocument;
let next = 0;
const newId = () => `id-${next++}`;

beforeAll(() => {
  const blanks = ['crew-tee-youth', 'crew-tee-adult'].map((id) => {
    const chart = starterChart(id);
    if (!chart) throw new Error(`no chart ${id}`);
    return blankFromChart(chart, newId(), 'Crew tee', 'Cotton');
  });
  const cloth = { name: 'Navy', hex: '#20344F', heather: false };
  const garment = { garmentId: 'tee', name: 'Tee', cloth, blanks, counts: [] };
  layout = addGarment(emptyLayout(''), garment);
});

function frontPrint(change: Partial<Print['sizeGroups'][number]> = {}): Print {
  const options = { printId: 'p', name: 'Crest', garmentIds: ['tee'], locationId: 'fullFront' as const, newId };
  const print = startingPrint(layout, art, options);
  if (!print) throw new Error('full front does not suit a tee');
  return { ...print, sizeGroups: print.sizeGroups.map((group) => ({ ...group, ...change })) };
}

describe('how a print fits', () => {
  it('has nothing to say of a full front as it starts, on any size', () => {
    const fits = printFit(layout, frontPrint());
    expect(fits.length).toBe(13);
    expect(fits.flatMap(({ findings }) => findings)).toEqual([]);
  });

  it('finds an adult print that reaches across both armholes of the smallest youth size, and stops it', () => {
    const print = frontPrint({ widthUm: umFromInches(14) });
    const [smallest] = printFit(layout, print);
    expect(smallest?.offered.size.label).toBe('XS');
    expect(smallest?.findings.map(({ kind }) => kind)).toContain('widerThanArmholes');
    const whole = { ...layout, prints: [print] };
    expect(stoppingFindings(whole)[0]).toMatchObject({ print: { printId: 'p' }, offered: { size: { label: 'XS' } } });
    expect(troubledSizes(whole, 'tee', 'front')[0]).toEqual(smallest && keyOf(smallest.offered));
  });

  it('finds a print pushed up over the collar, and one pushed off the garment', () => {
    const up = printFit(layout, frontPrint({ dropUm: umFromInches(-1) }));
    expect(
      up.every(({ findings }) => findings.some(({ kind, line }) => kind === 'crossesSeam' && line === 'collarSeam')),
    ).toBe(true);
    const off = printFit(layout, frontPrint({ acrossUm: umFromInches(40) }));
    expect(off.every(({ findings }) => findings.some(({ kind }) => kind === 'offGarment'))).toBe(true);
  });
});

describe('a width that fits', () => {
  it('is in quarter inches, leaves no finding, and would leave one a quarter inch wider', () => {
    const print = frontPrint({ widthUm: umFromInches(14) });
    const suggestions = fitSuggestions(print, printFit(layout, print), 'in');
    expect(suggestions.length).toBeGreaterThan(0);
    for (const suggestion of suggestions) {
      expect(suggestion.widthUm % umFromInches(1 / 4)).toBe(0);
      const mended = withOwnWidth(print, suggestion, newId());
      const wider = withOwnWidth(print, { ...suggestion, widthUm: suggestion.widthUm + umFromInches(1 / 4) }, newId());
      expect(troubledOf(mended, suggestion.sizes)).toBe(0);
      expect(troubledOf(wider, suggestion.sizes)).toBeGreaterThan(0);
    }
  });

  it('keeps every size in exactly one group when some get a width of their own', () => {
    const print = frontPrint({ widthUm: umFromInches(14) });
    const mended = fitSuggestions(print, printFit(layout, print), 'in').reduce(
      (each, suggestion) => withOwnWidth(each, suggestion, newId()),
      print,
    );
    expect(layoutFault({ ...layout, prints: [mended] })).toBeNull();
    expect(printFit(layout, mended).flatMap(({ findings }) => findings)).toEqual([]);
  });

  function troubledOf(print: Print, sizes: readonly { blankId: string; sizeId: string }[]): number {
    return printFit(layout, print).filter(
      ({ offered, findings }) =>
        findings.length > 0 &&
        sizes.some(({ blankId, sizeId }) => blankId === offered.blank.blankId && sizeId === offered.size.sizeId),
    ).length;
  }
});
