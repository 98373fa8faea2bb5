import { z } from 'zod';
import { type BlankStyle, CHART_SOURCES } from '@/lib/domain/garment/blank-style';
import { AGE_BANDS, GARMENT_KINDS } from '@/lib/domain/garment/kinds';
import { formatLengthValue } from '@/lib/domain/measure/format-length';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { parseLength } from '@/lib/domain/measure/parse-length';

const name = z.string().trim().min(1, 'required').max(80, 'tooLong');
const fabric = z.string().trim().max(80, 'tooLong').default('');
const ageBand = z.enum(AGE_BANDS);

/** What a new blank is, as its form sends it; its chart is read beside it. */
export const newBlankSchema = z.object({
  name,
  fabric,
  ageBand,
  kind: z.enum(GARMENT_KINDS),
  chartSource: z.enum(CHART_SOURCES),
});

/** Which state of a blank a form was filled in over: the instant of its last change. */
export const seenSchema = z.object({ seen: z.iso.datetime().transform((text) => new Date(text)) });

/** A length of 0 or more; what stands there is `kept` where the text is as it was shown. */
const tolerance = (unit: LengthUnit, kept: number) =>
  z.string().transform((text, context) => {
    if (text.trim() === formatLengthValue(kept, unit)) return kept;
    const parsed = parseLength(text, unit);
    if (parsed.ok && parsed.um >= 0) return parsed.um;
    context.addIssue({ code: 'custom', message: 'notALength' });
    return z.NEVER;
  });

/** What is known of a blank besides its chart and colours, as its form sends it. */
export function factsSchema(unit: LengthUnit, { cutToleranceUm }: Pick<BlankStyle, 'cutToleranceUm'>) {
  return z.object({
    name,
    fabric,
    ageBand,
    supplierNote: z.string().trim().max(1_000, 'tooLong').default(''),
    acrossTolerance: tolerance(unit, cutToleranceUm.acrossUm),
    longTolerance: tolerance(unit, cutToleranceUm.longUm),
  });
}

/** The same fields as they begin. */
export function factsFields(unit: LengthUnit, style: BlankStyle): Record<string, string> {
  return {
    name: style.name,
    fabric: style.fabric,
    ageBand: style.ageBand,
    supplierNote: style.supplierNote,
    acrossTolerance: formatLengthValue(style.cutToleranceUm.acrossUm, unit),
    longTolerance: formatLengthValue(style.cutToleranceUm.longUm, unit),
  };
}
