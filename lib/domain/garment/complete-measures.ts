import { type Micrometres, roundUm, UM_PER_INCH, UM_PER_MM } from '../measure/length';
import type { KindDesign, Tape } from './kind-design';
import { type EnteredMeasures, MEASURE_NAMES, type MeasureName, type MeasureRefusal, type Measures } from './measures';

export type CompletedMeasures =
  | { readonly ok: true; readonly measures: Measures }
  | { readonly ok: false; readonly refusal: MeasureRefusal };

/** No measure of any garment is longer (common practice, no source). */
const LONGEST_UM = 60 * UM_PER_INCH;
/** The shortest that a measure not named below may be: a tape reads no less. */
const SHORTEST_UM = UM_PER_MM;
/** Measures that are not that short on any garment (common practice, no source). */
const LEAST_UM: Partial<Record<MeasureName, Micrometres>> = {
  bodyLength: 4 * UM_PER_INCH,
  chestWidth: 4 * UM_PER_INCH,
  acrossShoulder: 4 * UM_PER_INCH,
  hemWidth: 4 * UM_PER_INCH,
  legLength: 6 * UM_PER_INCH,
  thighWidth: 3 * UM_PER_INCH,
  panelWidth: 2 * UM_PER_INCH,
  panelHeight: 2 * UM_PER_INCH,
};

/** The measures a kind is drawn from, required ones first, then in the order a chart lists them. */
export function measuresOf({ required, estimates }: Pick<KindDesign, 'required' | 'estimates'>): MeasureName[] {
  return [...required, ...MEASURE_NAMES.filter((measure) => estimates[measure] && !required.includes(measure))];
}

/**
 * All measures of one size from the few that were entered, or the first reason they cannot belong to one garment.
 * Entered values are kept as they are, those of other kinds are left out; what nobody entered follows by proportion and
 * is listed in `estimated`.
 */
export function completedFor(
  design: Pick<KindDesign, 'required' | 'estimates' | 'checks'>,
  entered: EnteredMeasures,
): CompletedMeasures {
  const names = measuresOf(design);
  for (const measure of design.required) {
    if (entered[measure] === undefined) return { ok: false, refusal: { reason: 'missing', measure } };
  }
  const mistyped = names.find((measure) => entered[measure] !== undefined && isOutOfRange(measure, entered[measure]));
  if (mistyped) return { ok: false, refusal: { reason: 'outOfRange', measure: mistyped } };
  const um: Partial<Record<MeasureName, Micrometres>> = {};
  const tape: Tape = (measure) => {
    um[measure] ??= entered[measure] ?? estimateUm(design, measure, tape);
    return um[measure] / UM_PER_MM;
  };
  for (const measure of names) tape(measure);
  const refusal = impossible(design, names, um, tape);
  if (refusal) return { ok: false, refusal };
  const inOrder = Object.fromEntries(MEASURE_NAMES.filter((name) => name in um).map((name) => [name, um[name]]));
  return {
    ok: true,
    measures: { um: inOrder, estimated: names.filter((measure) => entered[measure] === undefined) },
  };
}

/** Reads measures in millimetres. Throws for one that is not there: a flat is drawn from complete measures only. */
export function tapeFor({ um }: Pick<Measures, 'um'>): Tape {
  return (measure) => {
    const value = um[measure];
    if (value === undefined) throw new Error(`no ${measure} among ${Object.keys(um).join(', ')}`);
    return value / UM_PER_MM;
  };
}

function estimateUm({ estimates }: Pick<KindDesign, 'estimates'>, measure: MeasureName, tape: Tape): Micrometres {
  const estimate = estimates[measure];
  if (!estimate) throw new Error(`${measure} has no proportion`);
  return roundUm(estimate(tape) * UM_PER_MM);
}

function impossible(
  { checks }: Pick<KindDesign, 'checks'>,
  names: readonly MeasureName[],
  um: EnteredMeasures,
  tape: Tape,
): MeasureRefusal | null {
  for (const measure of names) {
    if (isOutOfRange(measure, um[measure])) return { reason: 'outOfRange', measure };
  }
  for (const check of checks) {
    const refusal = check(tape);
    if (refusal) return refusal;
  }
  return null;
}

function isOutOfRange(measure: MeasureName, um: number | undefined): boolean {
  const least = LEAST_UM[measure] ?? SHORTEST_UM;
  return !(um !== undefined && Number.isInteger(um) && um >= least && um <= LONGEST_UM);
}
