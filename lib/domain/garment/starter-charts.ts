import { umFromInches } from '../measure/length';
import type { AgeBand, GarmentKind } from './kinds';
import type { EnteredMeasures } from './measures';

/** One size of a chart: a stable id, the label people order by, and what the chart gives. */
export type ChartSize = { readonly id: string; readonly label: string; readonly entered: EnteredMeasures };

export type StarterChart = {
  readonly id: string;
  readonly kind: GarmentKind;
  readonly ageBand: AgeBand;
  readonly sizes: readonly ChartSize[];
};

/** Cutting varies this much, either way, across and along a garment (common practice, no source). */
export const USUAL_CUT_TOLERANCE = { acrossUm: umFromInches(3 / 4), longUm: umFromInches(1) } as const;

/**
 * Generic charts so that a new shop can begin (common practice, no source; chest and length agree with several published
 * makers' sheets, sleeve lengths are from memory). To be replaced by the supplier's own chart.
 */
export const STARTER_CHARTS: readonly StarterChart[] = [
  {
    id: 'crew-tee-adult',
    kind: 'crewTee',
    ageBand: 'adult',
    sizes: stepped(
      ['S', 'M', 'L', 'XL', '2XL', '3XL', '4XL', '5XL'],
      { chest: 18, length: 28, sleeve: 8 },
      { chest: 2, length: 1, sleeve: 0.25 },
    ),
  },
  {
    id: 'crew-tee-youth',
    kind: 'crewTee',
    ageBand: 'youth',
    sizes: stepped(
      ['XS', 'S', 'M', 'L', 'XL'],
      { chest: 16, length: 20.5, sleeve: 6 },
      { chest: 1, length: 1.5, sleeve: 0.375 },
    ),
  },
];

type Inches = { chest: number; length: number; sleeve: number };

function stepped(labels: readonly string[], first: Inches, step: Inches): ChartSize[] {
  return labels.map((label, index) => ({
    id: label,
    label,
    entered: {
      bodyLength: umFromInches(first.length + step.length * index),
      chestWidth: umFromInches(first.chest + step.chest * index),
      sleeveLength: umFromInches(first.sleeve + step.sleeve * index),
    },
  }));
}

/** The starter chart with this id, or null. */
export function starterChart(id: string): StarterChart | null {
  return STARTER_CHARTS.find((chart) => chart.id === id) ?? null;
}
