import { type LengthUnit, type Micrometres, tradeStepUm } from '../../measure/length';
import type { ArtFinding } from './art-finding';

/**
 * The width at which a finding passes, as tapes and fields read it: to the step of the trade, down where less is better, up
 * where more is, so that the rounded width passes too. Null where no width would do.
 */
export function passingWidthUm({ code, passesAtWidthUm }: ArtFinding, unit: LengthUnit): Micrometres | null {
  if (passesAtWidthUm === null) return null;
  const stepUm = tradeStepUm(unit);
  const steps = passesAtWidthUm / stepUm;
  if (code === 'thinStrokes' || code === 'thinGaps') return Math.ceil(steps) * stepUm;
  return Math.max(1, Math.floor(steps)) * stepUm;
}
