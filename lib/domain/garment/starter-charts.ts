import { umFromInches } from '../measure/length';
import type { StarterChart } from './chart/chart';
import { OTHER_CHARTS } from './chart/other-charts';
import { TOP_CHARTS } from './chart/top-charts';

/** Cutting varies this much, either way, across and along a garment (common practice, no source). */
export const USUAL_CUT_TOLERANCE = { acrossUm: umFromInches(3 / 4), longUm: umFromInches(1) } as const;

/**
 * Generic charts so that a new shop can begin: common practice, no source. Chest and length of tees, sweatshirts and
 * hoods agree with several published makers' sheets; sleeves and the charts of other kinds are from memory. To be replaced
 * by the supplier's own chart.
 */
export const STARTER_CHARTS: readonly StarterChart[] = [...TOP_CHARTS, ...OTHER_CHARTS];

/** The starter chart with this id, or null. */
export function starterChart(id: string): StarterChart | null {
  return STARTER_CHARTS.find((chart) => chart.id === id) ?? null;
}
