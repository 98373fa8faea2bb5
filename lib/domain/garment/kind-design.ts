import type { Flat, Side } from './flat';
import type { MeasureName, MeasureRefusal } from './measures';

/** Reads a measure of the size being drawn, in millimetres. Throws for a measure the kind does not have. */
export type Tape = (measure: MeasureName) => number;

/** How the measures nobody entered follow from the others, in millimetres. */
export type Estimates = Readonly<Partial<Record<MeasureName, (tape: Tape) => number>>>;

/** Looks for one way in which a size cannot be; null when it can. */
export type MeasureCheck = (tape: Tape) => MeasureRefusal | null;

/** All there is to know about a kind of garment: its measures as data, its drawing as a few calls of the shape grammar. */
export type KindDesign = {
  /** Sides that can be decorated, front first. */
  readonly sides: readonly Side[];
  /** Measures a chart must give. */
  readonly required: readonly MeasureName[];
  /** All its other measures. */
  readonly estimates: Estimates;
  readonly checks: readonly MeasureCheck[];
  /** Draws one of `sides`. */
  readonly draw: (tape: Tape, side: Side) => Flat;
};
