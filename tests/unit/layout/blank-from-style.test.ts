import { describe, expect, it } from 'vitest';
import { STARTER_CHARTS, starterChart } from '@/lib/domain/garment/starter-charts';
import { blankFromStyle, type StyleToHang, styleOfChart } from '@/lib/domain/layout/blank-from-style';
import { blankSchema } from '@/lib/domain/layout/document';
import { umFromInches } from '@/lib/domain/measure/length';

const style: StyleToHang = {
  name: 'Harbour tee',
  kind: 'crewTee',
  ageBand: 'adult',
  fabric: 'Blend',
  cutToleranceUm: { acrossUm: umFromInches(1 / 2), longUm: umFromInches(1) },
  sizes: [
    {
      sizeId: 'size-s',
      label: 'S',
      entered: { chestWidth: umFromInches(18), bodyLength: umFromInches(28), sleeveLength: umFromInches(8) },
    },
    {
      sizeId: 'size-m',
      label: 'M',
      entered: {
        chestWidth: umFromInches(20),
        bodyLength: umFromInches(29),
        sleeveLength: umFromInches(8.25),
        neckWidth: umFromInches(7),
      },
    },
  ],
};

describe('a blank from a style', () => {
  it('keeps what the chart gives, estimates the rest and marks it, size by size', () => {
    const made = blankFromStyle(style, { blankId: 'hung', shopBlankId: 'listed' });
    if (!made.ok) throw new Error(made.refusal.reason);
    const [small, middle] = made.blank.sizes;
    expect(small?.measuresUm.chestWidth).toBe(umFromInches(18));
    expect(small?.estimated).toContain('neckWidth');
    expect(middle?.measuresUm.neckWidth).toBe(umFromInches(7));
    expect(middle?.estimated).not.toContain('neckWidth');
    expect(made.blank).toMatchObject({ ...style, blankId: 'hung', shopBlankId: 'listed', sizes: [{}, {}] });
    expect(blankSchema.parse(made.blank)).toEqual(made.blank);
  });

  it('does not change when the style does', () => {
    const mine = structuredClone(style);
    const made = blankFromStyle(mine, { blankId: 'hung' });
    const before = structuredClone(made);
    for (const { entered } of mine.sizes) entered.chestWidth = 1;
    mine.cutToleranceUm.acrossUm = 1;
    expect(made).toEqual(before);
  });

  it('refuses an empty chart', () => {
    expect(blankFromStyle({ ...style, sizes: [] }, { blankId: 'hung' })).toEqual({
      ok: false,
      refusal: { reason: 'noSizes' },
    });
  });

  it('refuses a size that cannot be, naming it and the measure', () => {
    const thin = { sizeId: 'x', label: 'XL', entered: { chestWidth: umFromInches(5), bodyLength: umFromInches(40) } };
    expect(blankFromStyle({ ...style, sizes: [...style.sizes, thin] }, { blankId: 'hung' })).toEqual({
      ok: false,
      refusal: { reason: 'impossible', sizeLabel: 'XL', refusal: { reason: 'missing', measure: 'sleeveLength' } },
    });
    const sleeved = { ...thin, entered: { ...thin.entered, sleeveLength: umFromInches(8) } };
    expect(blankFromStyle({ ...style, sizes: [sleeved] }, { blankId: 'hung' })).toMatchObject({
      refusal: { reason: 'impossible', refusal: { reason: 'tooLongForWidth' } },
    });
  });

  it.each(STARTER_CHARTS)('is made from every starter chart: $id', (chart) => {
    const made = blankFromStyle(styleOfChart(chart, { name: 'Plain', fabric: '' }), { blankId: 'hung' });
    expect(made).toMatchObject({ ok: true, blank: { kind: chart.kind, ageBand: chart.ageBand } });
    expect(made.ok && made.blank.sizes.map(({ label }) => label)).toEqual(chart.sizes.map(({ label }) => label));
  });

  it('says nothing of the shop’s list where a starter chart was taken', () => {
    const chart = starterChart('tote-adult');
    if (!chart) throw new Error('no chart of totes');
    const made = blankFromStyle(styleOfChart(chart, { name: 'Tote', fabric: 'Cotton' }), { blankId: 'hung' });
    expect(made.ok && 'shopBlankId' in made.blank).toBe(false);
  });
});
