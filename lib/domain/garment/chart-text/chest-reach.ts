import { type Micrometres, roundUm } from '../../measure/length';
import type { GarmentKind } from '../kinds';
import { STARTER_CHARTS } from '../starter-charts';
import type { MeasureLine } from './chart-lines';
import type { ChartNote, ChartReads, ReadSize } from './chart-reading';

/**
 * A chest that is this many times the length, or the widest usual one where no length is given, is suspected of being the
 * whole way round (common practice, no source).
 */
const SUSPECT_SHARE = 1.15;

/** Says where half or a quarter was taken, and asks where a chest may go the whole way round. */
export function noteReach(
  lines: readonly MeasureLine[],
  sizes: readonly ReadSize[],
  { kind, chestIs }: ChartReads,
): ChartNote[] {
  const [suspects, given] = [sizes.filter((size) => isSuspect(size, kind)), sizes.filter(hasChest)];
  return lines.flatMap(({ means: { measure, reach, share, plain }, heading }): ChartNote[] => {
    if (reach === 'girth') return [{ code: share === 0.25 ? 'girthQuartered' : 'girthHalved', measure, heading }];
    if (reach === 'bothLegs') return [{ code: 'bothLegsHalved', measure, heading }];
    if (measure !== 'chestWidth') return [];
    if (chestIs === 'girth') return [{ code: 'girthHalved', measure, heading }];
    return plain && suspects.length * 2 > given.length ? [{ code: 'mayBeGirth', measure, heading }] : [];
  });
}

function hasChest({ entered: { chestWidth } }: ReadSize): boolean {
  return chestWidth !== undefined;
}

function isSuspect({ entered: { chestWidth, bodyLength } }: ReadSize, kind: GarmentKind): boolean {
  if (chestWidth === undefined) return false;
  return chestWidth > SUSPECT_SHARE * (bodyLength ?? widestChestUm(kind));
}

function widestChestUm(kind: GarmentKind): Micrometres {
  const charts = STARTER_CHARTS.filter((chart) => chart.kind === kind);
  return Math.max(...charts.flatMap(({ sizes }) => sizes.map(({ entered }) => entered.chestWidth ?? 0)));
}

/** The size with half the chest, unless its heading had it halved already. */
export function withHalfChest(size: ReadSize, lines: readonly MeasureLine[]): ReadSize {
  const { chestWidth } = size.entered;
  const line = lines.find(({ means }) => means.measure === 'chestWidth');
  if (chestWidth === undefined || line?.means.reach === 'girth') return size;
  return { ...size, entered: { ...size.entered, chestWidth: roundUm(chestWidth / 2) } };
}
