import { crewTeeFlat } from './crew-tee';
import type { Flat, Side } from './flat';
import type { EnteredMeasures, MeasureName, MeasureRefusal, Measures } from './measures';
import { TEE_REQUIRED, teeMeasures } from './tee-measures';

/** Garment kinds a flat can be drawn for. */
export const GARMENT_KINDS = ['crewTee'] as const;
export type GarmentKind = (typeof GARMENT_KINDS)[number];

/** Whom a blank is cut for; starting sizes and places of prints depend on it. */
export const AGE_BANDS = ['adult', 'youth', 'toddler', 'infant'] as const;
export type AgeBand = (typeof AGE_BANDS)[number];

type KindOfGarment = {
  readonly sides: readonly Side[];
  readonly required: readonly MeasureName[];
  readonly complete: (
    entered: EnteredMeasures,
  ) => { ok: true; measures: Measures } | { ok: false; refusal: MeasureRefusal };
  readonly draw: (measures: Measures, side: Side) => Flat;
};

const KINDS: Record<GarmentKind, KindOfGarment> = {
  crewTee: {
    sides: ['front', 'back'],
    required: TEE_REQUIRED,
    complete: teeMeasures,
    draw: (measures, side) => {
      if (side !== 'front' && side !== 'back') throw new Error(`crewTee has no ${side}`);
      return crewTeeFlat(measures, side);
    },
  },
};

/** The sides of a kind that can be decorated, front first. */
export function sidesOf(kind: GarmentKind): readonly Side[] {
  return KINDS[kind].sides;
}

/** The measures a chart of this kind must give; the rest are estimated by proportion. */
export function requiredMeasures(kind: GarmentKind): readonly MeasureName[] {
  return KINDS[kind].required;
}

/** All measures of one size from what its chart gives, or why they cannot be. */
export function completeMeasures(kind: GarmentKind, entered: EnteredMeasures) {
  return KINDS[kind].complete(entered);
}

/** The flat of one side of one size, in millimetres. Throws for a side the kind does not have. */
export function drawFlat(kind: GarmentKind, measures: Measures, side: Side): Flat {
  return KINDS[kind].draw(measures, side);
}
