import { describe, expect, it } from 'vitest';
import { FLAT_LINES, SIDES } from '@/lib/domain/garment/flat';
import { AGE_BANDS, GARMENT_KINDS } from '@/lib/domain/garment/kinds';
import { MEASURE_NAMES, MEASURE_REFUSALS } from '@/lib/domain/garment/measures';
import { translatorFor } from '@/lib/messages/translator';

const t = translatorFor('en', 'garment-words');
const readings = translatorFor('en', 'readings');

describe('the words of garments', () => {
  it('name every kind, measure, line and side, no two kinds or measures alike', () => {
    const kinds = GARMENT_KINDS.map((kind) => t(`kind.${kind}`));
    const measures = MEASURE_NAMES.map((measure) => t(`measure.${measure}`));
    expect(new Set(kinds).size).toBe(kinds.length);
    expect(new Set(measures).size).toBe(measures.length);
    expect(FLAT_LINES.map((line) => t(`line.${line}`)).every((words) => words.length > 0)).toBe(true);
    expect(SIDES.map((side) => readings(`side.${side}`)).every((words) => words.length > 0)).toBe(true);
  });

  it('say whom a kind is cut for where that is not a grown person', () => {
    expect(AGE_BANDS.map((band) => t('kindAndBand', { band, kind: t('kind.crewTee') }))).toEqual([
      'Crew tee',
      'Crew tee, youth',
      'Crew tee, toddler',
      'Crew tee',
    ]);
  });

  it.each(MEASURE_REFUSALS)('say in one sentence what is wrong and what to do: %s', (reason) => {
    expect(t(`refusal.${reason}`, { measure: t('measure.neckWidth') })).toMatch(/^Neck .+: .+\.$/);
  });

  it('name both sizes where a chart shrinks', () => {
    expect(t('step.shrinks', { measure: t('measure.chestWidth'), size: 'L', before: 'M' })).toMatch(
      /^Chest of L .+ of M/,
    );
  });
});
