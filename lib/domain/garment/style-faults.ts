import type { Micrometres } from '../measure/length';
import type { StyleColour, StyleSize } from './blank-style';
import { checkedChart } from './chart-text/checked-chart';
import { completeMeasures, type GarmentKind, widthMeasureOf } from './kinds';
import type { EnteredMeasures, MeasureName, MeasureRefusal } from './measures';

/** A measure that another one does not go with, as it was entered or is estimated; micrometres. */
export type OtherMeasure = { readonly measure: MeasureName; readonly um: Micrometres; readonly isEstimated: boolean };

/** Something of a chart that cannot be, and the size it is said of. */
export type ChartFault =
  | { readonly reason: 'repeatedSize'; readonly sizeId: string }
  | (MeasureRefusal & { readonly sizeId: string; readonly other: OtherMeasure | null })
  | {
      readonly reason: 'shrinks';
      readonly sizeId: string;
      readonly measure: MeasureName;
      readonly afterSizeId: string;
    };

/** Something of a style that cannot be. */
export type StyleFault = ChartFault | { readonly reason: 'repeatedColour'; readonly colourId: string };

type ChartSizes = readonly Pick<StyleSize, 'sizeId' | 'label' | 'entered'>[];

/**
 * All that cannot be of a chart: a label that two sizes have, for each size the first of its measures that cannot belong
 * to one garment, and sizes that are smaller than the one before. Sizes that cannot be by themselves are not compared.
 */
export function chartFaults(kind: GarmentKind, sizes: ChartSizes): ChartFault[] {
  const repeated = repeats(sizes, ({ label }) => label).map(({ sizeId }) => ({
    reason: 'repeatedSize' as const,
    sizeId,
  }));
  const { refusals, steps } = checkedChart(kind, sizes);
  const impossible = refusals.map(({ sizeId, refusal }) => {
    const entered = sizes.find((size) => size.sizeId === sizeId)?.entered ?? {};
    return { ...refusal, sizeId, other: otherMeasure(kind, entered, refusal) };
  });
  const isImpossible = (id: string) => refusals.some(({ sizeId }) => sizeId === id);
  const shrinking = steps.filter(({ sizeId, afterSizeId }) => !(isImpossible(sizeId) || isImpossible(afterSizeId)));
  return [...repeated, ...impossible, ...shrinking];
}

/** Colours whose name another colour of the style has, too. */
export function repeatedColours(colours: readonly StyleColour[]): StyleFault[] {
  return repeats(colours, ({ name }) => name).map(({ colourId }) => ({ reason: 'repeatedColour', colourId }));
}

/** All but the first of those that are called the same; capitals make no difference. */
function repeats<Named>(all: readonly Named[], nameOf: (each: Named) => string): Named[] {
  const names = all.map((each) => nameOf(each).trim().toLowerCase());
  return all.filter((_, index) => names.indexOf(names[index] ?? '') < index);
}

/** The measure each refusal compares with; none where it compares with several or with a bare limit. */
function comparedWith(kind: GarmentKind, reason: MeasureRefusal['reason']): MeasureName | null {
  switch (reason) {
    case 'tooLongForWidth':
      return widthMeasureOf(kind);
    case 'neckWiderThanShoulders':
      return kind === 'raglan' ? 'chestWidth' : 'acrossShoulder';
    case 'neckBelowArmhole':
    case 'openingWiderThanSleeve':
      return 'armhole';
    case 'backNeckBelowFront':
      return 'frontNeckDrop';
    case 'ribFillsNeck':
      return 'neckWidth';
    case 'armholeBelowHem':
    case 'tooWideForLength':
      return 'bodyLength';
    case 'sleeveTooShort':
    case 'waistOutOfLine':
    case 'hemOutOfLine':
      return 'chestWidth';
    case 'missing':
    case 'outOfRange':
    case 'shouldersWiderThanReach':
    case 'partTooLarge':
      return null;
  }
}

function otherMeasure(kind: GarmentKind, entered: EnteredMeasures, refusal: MeasureRefusal): OtherMeasure | null {
  const measure = comparedWith(kind, refusal.reason);
  if (measure === null || measure === refusal.measure) return null;
  const own = entered[measure];
  if (own !== undefined) return { measure, um: own, isEstimated: false };
  // Estimates come with a size that can be: the same one without the measure that was refused.
  const { [refusal.measure]: _, ...rest } = entered;
  const completed = completeMeasures(kind, rest);
  const um = completed.ok ? completed.measures.um[measure] : undefined;
  return um === undefined ? null : { measure, um, isEstimated: true };
}
