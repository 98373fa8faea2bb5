import type { FrozenFlat } from '../garment/flat';
import { type GarmentKind, widthMeasureOf } from '../garment/kinds';
import { type MeasureName, WIDTH_TAKEN_BELOW_UM } from '../garment/measures';
import { applyMatrix, inverted, type Matrix } from '../geometry/matrix';
import { distance, type Point } from '../geometry/point';
import { type Micrometres, mmFromUm, umFromMm } from '../measure/length';
import type { GarmentSize } from './document';
import type { PhotographSetting } from './photograph';

/** A width that a photograph can be checked by: which measure, what the chart says, and between where it lies on the flat. */
export type WidthToCheck = {
  readonly measure: MeasureName;
  readonly chartUm: Micrometres;
  /** True where nobody entered it: a difference then tells little. */
  readonly estimated: boolean;
  readonly from: Point;
  readonly to: Point;
};

/** A width in a photograph beside the chart's; `differenceUm` is positive where the photograph's is wider. */
export type CheckedWidth = {
  readonly foundUm: Micrometres;
  readonly chartUm: Micrometres;
  readonly differenceUm: Micrometres;
  /** True where it differs by more than the cut varies. */
  readonly beyondCut: boolean;
};

/** The width a side is checked by: the opening of a sleeve, otherwise the width its kind is known by. */
export function widthToCheck(
  kind: GarmentKind,
  { measuresUm, estimated }: Pick<GarmentSize, 'measuresUm' | 'estimated'>,
  { side, points }: Pick<FrozenFlat, 'side' | 'points'>,
): WidthToCheck | null {
  const measure = side === 'leftSleeve' || side === 'rightSleeve' ? 'sleeveOpening' : widthMeasureOf(kind);
  const chartUm = measuresUm[measure];
  if (chartUm === undefined) return null;
  const y = heightOfWidth(measure, measuresUm, points);
  const half = mmFromUm(chartUm) / 2;
  return { measure, chartUm, estimated: estimated.includes(measure), from: { x: -half, y }, to: { x: half, y } };
}

/** How far down its flat a width is taken, mm. */
function heightOfWidth(
  measure: MeasureName,
  measuresUm: GarmentSize['measuresUm'],
  points: FrozenFlat['points'],
): number {
  const { sleeveHemFold, underarm, brimSeamCentre, bibTopCentre, hemCentre } = points;
  const below = mmFromUm(WIDTH_TAKEN_BELOW_UM);
  if (measure === 'sleeveOpening') return sleeveHemFold?.y ?? 0;
  if (measure === 'thighWidth') return mmFromUm(measuresUm.rise ?? 0) + below;
  if (underarm) return underarm.y + below;
  if (brimSeamCentre) return brimSeamCentre.y;
  const foot = hemCentre?.y ?? 0;
  return bibTopCentre ? foot * 0.7 : foot / 2;
}

/** Where that width would lie in the photograph if it were as the chart says, whole px. */
export function startingCheck(matrix: Matrix, { from, to }: WidthToCheck): NonNullable<PhotographSetting['check']> {
  const toPicture = inverted(matrix);
  const inPicture = (point: Point) => {
    const { x, y } = applyMatrix(toPicture, point);
    return { x: Math.round(x), y: Math.round(y) };
  };
  return [inPicture(from), inPicture(to)];
}

/** The length between two points of a photograph, px. */
export function takenUm(matrix: Matrix, [from, to]: NonNullable<PhotographSetting['check']>): Micrometres {
  return umFromMm(distance(applyMatrix(matrix, from), applyMatrix(matrix, to)));
}

/** A width taken between two points of a photograph beside the chart's. `cutAcrossUm`: how much the cut varies across. */
export function checkedWidth(
  matrix: Matrix,
  check: NonNullable<PhotographSetting['check']>,
  { chartUm }: Pick<WidthToCheck, 'chartUm'>,
  cutAcrossUm: Micrometres,
): CheckedWidth {
  const foundUm = takenUm(matrix, check);
  const differenceUm = foundUm - chartUm;
  return { foundUm, chartUm, differenceUm, beyondCut: Math.abs(differenceUm) > cutAcrossUm };
}
