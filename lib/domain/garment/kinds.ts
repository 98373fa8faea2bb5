import { type CompletedMeasures, completedFor, measuresOf, tapeFor } from './complete-measures';
import { crossingOutline } from './crossing-outline';
import type { Flat, Side } from './flat';
import { apron } from './kind/apron';
import { capFront } from './kind/cap-front';
import { crewSweatshirt } from './kind/crew-sweatshirt';
import { crewTee } from './kind/crew-tee';
import { fittedTee } from './kind/fitted-tee';
import { infantBodysuit } from './kind/infant-bodysuit';
import { joggerLeg } from './kind/jogger-leg';
import { longSleeveTee } from './kind/long-sleeve-tee';
import { plainPanel } from './kind/plain-panel';
import { polo } from './kind/polo';
import { pulloverHood } from './kind/pullover-hood';
import { raglan } from './kind/raglan';
import { tank } from './kind/tank';
import { tote } from './kind/tote';
import { vNeckTee } from './kind/v-neck-tee';
import { zipHood } from './kind/zip-hood';
import type { KindDesign } from './kind-design';
import type { EnteredMeasures, MeasureName, Measures } from './measures';

/** Garment kinds a flat can be drawn for. Youth and toddler tees are crew tees of another age band. */
export const GARMENT_KINDS = [
  'crewTee',
  'vNeckTee',
  'longSleeveTee',
  'raglan',
  'tank',
  'fittedTee',
  'crewSweatshirt',
  'pulloverHood',
  'zipHood',
  'polo',
  'infantBodysuit',
  'joggerLeg',
  'capFront',
  'tote',
  'apron',
  'plainPanel',
] as const;
export type GarmentKind = (typeof GARMENT_KINDS)[number];

/** Whom a blank is cut for; starting sizes and places of prints depend on it. */
export const AGE_BANDS = ['adult', 'youth', 'toddler', 'infant'] as const;
export type AgeBand = (typeof AGE_BANDS)[number];

const KINDS: Readonly<Record<GarmentKind, KindDesign>> = {
  crewTee,
  vNeckTee,
  longSleeveTee,
  raglan,
  tank,
  fittedTee,
  crewSweatshirt,
  pulloverHood,
  zipHood,
  polo,
  infantBodysuit,
  joggerLeg,
  capFront,
  tote,
  apron,
  plainPanel,
};

/** The sides of a kind that can be decorated, front first. */
export function sidesOf(kind: GarmentKind): readonly Side[] {
  return KINDS[kind].sides;
}

/** The measures a chart of this kind must give; the rest are estimated by proportion. */
export function requiredMeasures(kind: GarmentKind): readonly MeasureName[] {
  return KINDS[kind].required;
}

/** The measures that tell somebody how wide a garment is, to lay one of their own beside it. */
export const WIDTH_MEASURES = ['chestWidth', 'thighWidth', 'panelWidth'] as const;
export type WidthMeasure = (typeof WIDTH_MEASURES)[number];

/** Which of them a kind has. */
export function widthMeasureOf(kind: GarmentKind): WidthMeasure {
  const measure = WIDTH_MEASURES.find((each) => KINDS[kind].required.includes(each));
  if (!measure) throw new Error(`${kind} has no width`);
  return measure;
}

/** Whether a kind's sizes are those of who wears it; not so where they are how wide or tall the thing itself is. */
export function isSizedByWearer(kind: GarmentKind): boolean {
  return widthMeasureOf(kind) !== 'panelWidth';
}

/** All the measures a kind is drawn from, required ones first. */
export function kindMeasures(kind: GarmentKind): readonly MeasureName[] {
  return measuresOf(KINDS[kind]);
}

/** All measures of one size from what its chart gives, or why they cannot be. */
export function completeMeasures(kind: GarmentKind, entered: EnteredMeasures): CompletedMeasures {
  const completed = completedFor(KINDS[kind], entered);
  if (!completed.ok) return completed;
  const refusal = crossingOutline(KINDS[kind], completed.measures);
  return refusal ? { ok: false, refusal } : completed;
}

/** The flat of one side of one size, in millimetres. Throws for a side or a measure the kind does not have. */
export function drawFlat(kind: GarmentKind, measures: Pick<Measures, 'um'>, side: Side): Flat {
  const design = KINDS[kind];
  if (!design.sides.includes(side)) throw new Error(`${kind} has no ${side}`);
  return design.draw(tapeFor(measures), side);
}
