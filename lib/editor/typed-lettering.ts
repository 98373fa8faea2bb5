import { type Micrometres, UM_PER_MM } from '@/lib/domain/measure/length';

/** The narrowest and widest line round letters, mm. */
const OUTLINE_MM = { least: 0.1, most: 10 } as const;

const NUMBER = /^([+-]?)\s*(\d+(?:[.,]\d*)?|[.,]\d+)$/;

function numberFrom(written: string): number | null {
  const match = NUMBER.exec(written.replace(/−/g, '-').trim());
  if (!match) return null;
  return Number(match[2]?.replace(',', '.')) * (match[1] === '-' ? -1 : 1);
}

/** A percentage as it was typed, `12` or `-5 %`; null where it is none, or not within the limits. */
export function typedPercent(
  written: string,
  { least, most }: { readonly least: number; readonly most: number },
): number | null {
  const percent = numberFrom(written.replace(/%\s*$/, ''));
  return percent === null || percent < least || percent > most ? null : percent;
}

/** The width of a line in millimetres as it was typed; null for none: `none`, nothing, or 0. */
export function typedMillimetres(
  written: string,
  none: string,
): { readonly ok: true; readonly um: Micrometres | null } | { readonly ok: false } {
  const tidy = written.trim().toLowerCase();
  if (tidy === '' || tidy === none.toLowerCase()) return { ok: true, um: null };
  const mm = numberFrom(tidy.replace(/mm\s*$/, ''));
  if (mm === 0) return { ok: true, um: null };
  if (mm === null || mm < OUTLINE_MM.least || mm > OUTLINE_MM.most) return { ok: false };
  return { ok: true, um: Math.round(mm * UM_PER_MM) };
}
