import { describe, expect, it } from 'vitest';
import { completeMeasures, type GarmentKind } from '@/lib/domain/garment/kinds';
import type { EnteredMeasures, MeasureRefusal } from '@/lib/domain/garment/measures';
import { umFromInches } from '@/lib/domain/measure/length';

const TEE = { bodyLength: 28, chestWidth: 18, sleeveLength: 8 };
const HOOD = { bodyLength: 27, chestWidth: 19.5, sleeveLength: 24.5 };

function refusalOf(kind: GarmentKind, inches: Partial<Record<keyof EnteredMeasures, number>>): MeasureRefusal | null {
  const entered = Object.fromEntries(Object.entries(inches).map(([name, value]) => [name, umFromInches(value)]));
  const completed = completeMeasures(kind, entered);
  return completed.ok ? null : completed.refusal;
}

describe('measures that cannot belong to one garment', () => {
  it.each<
    [GarmentKind, Partial<Record<keyof EnteredMeasures, number>>, MeasureRefusal['reason'], keyof EnteredMeasures]
  >([
    ['crewTee', { bodyLength: 28, chestWidth: 18 }, 'missing', 'sleeveLength'],
    ['tote', { panelWidth: 15 }, 'missing', 'panelHeight'],
    ['crewTee', { ...TEE, chestWidth: 5, bodyLength: 40 }, 'tooLongForWidth', 'bodyLength'],
    ['crewTee', { ...TEE, chestWidth: 40, bodyLength: 12 }, 'tooWideForLength', 'chestWidth'],
    ['crewTee', { ...TEE, chestWidth: 0.2 }, 'outOfRange', 'chestWidth'],
    ['crewTee', { ...TEE, bodyLength: 63 }, 'outOfRange', 'bodyLength'],
    ['crewTee', { ...TEE, neckWidth: 20 }, 'neckWiderThanShoulders', 'neckWidth'],
    ['crewTee', { ...TEE, frontNeckDrop: 11 }, 'neckBelowArmhole', 'frontNeckDrop'],
    ['crewTee', { ...TEE, backNeckDrop: 5 }, 'backNeckBelowFront', 'backNeckDrop'],
    ['crewTee', { ...TEE, collarRib: 3.4 }, 'ribFillsNeck', 'collarRib'],
    ['crewTee', { ...TEE, acrossShoulder: 7 }, 'shouldersWiderThanReach', 'armhole'],
    ['crewTee', { ...TEE, bodyLength: 10 }, 'armholeBelowHem', 'armhole'],
    ['crewTee', { ...TEE, hemWidth: 30 }, 'hemOutOfLine', 'hemWidth'],
    ['crewTee', { ...TEE, sleeveLength: 1 }, 'sleeveTooShort', 'sleeveLength'],
    ['crewTee', { ...TEE, sleeveOpening: 12 }, 'openingWiderThanSleeve', 'sleeveOpening'],
    ['longSleeveTee', { ...TEE, sleeveLength: 9 }, 'sleeveTooShort', 'sleeveLength'],
    [
      'raglan',
      { bodyLength: 14.5, chestWidth: 18, sleeveLength: 22.5, hemWidth: 21.5 },
      'partTooLarge',
      'sleeveLength',
    ],
    ['crewTee', { ...TEE, neckWidth: 4.5, frontNeckDrop: 6, collarRib: 1.25 }, 'ribFillsNeck', 'collarRib'],
    ['fittedTee', { ...TEE, waistWidth: 21 }, 'waistOutOfLine', 'waistWidth'],
    ['pulloverHood', { ...HOOD, pocketWidth: 20 }, 'partTooLarge', 'pocketWidth'],
    ['pulloverHood', { ...HOOD, cuffRib: 12 }, 'partTooLarge', 'cuffRib'],
    ['polo', { ...TEE, placketLength: 26 }, 'partTooLarge', 'placketLength'],
    ['tote', { panelWidth: 15, panelHeight: 16, handleSpacing: 16 }, 'partTooLarge', 'handleSpacing'],
    ['apron', { panelWidth: 24, bodyLength: 30, bibWidth: 30 }, 'partTooLarge', 'bibWidth'],
    ['joggerLeg', { legLength: 40, thighWidth: 12, waistWidth: 14 }, 'waistOutOfLine', 'waistWidth'],
  ])('are refused with the reason: %s %o', (kind, inches, reason, measure) => {
    expect(refusalOf(kind, inches)).toEqual({ reason, measure });
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -1, 0, 457_200.5])(
    'are refused where a number is none of a tape: %d',
    (chestWidth) => {
      expect(completeMeasures('crewTee', { chestWidth, bodyLength: 711_200, sleeveLength: 203_200 })).toEqual({
        ok: false,
        refusal: { reason: 'outOfRange', measure: 'chestWidth' },
      });
    },
  );
});
