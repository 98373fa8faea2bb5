import type { GarmentBlank } from '@/lib/domain/layout/document';
import { type ChartChanges, chartChanges, isChartAsTaken } from '@/lib/domain/layout/take-chart';
import type { Locale } from '@/lib/messages/locales';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { blankOf, blankStyleId, loadStyle } from './style-to-hang';

/**
 * What the shop's chart says otherwise by now than a garment was drawn from; null where nothing, where the blank is gone
 * from the list, or where its chart cannot be drawn or is of another kind now.
 */
export async function changesSince(
  maker: MakerAccess,
  locale: Locale,
  blank: GarmentBlank,
): Promise<ChartChanges | null> {
  if (blank.shopBlankId === undefined) return null;
  const now = await loadStyle(maker, locale, blankStyleId(blank.shopBlankId), '');
  // Estimating a chart's measures takes long, and most charts stay as they are.
  if (!now || now.style.kind !== blank.kind || isChartAsTaken(blank, now.style)) return null;
  const made = blankOf(locale, now, blank.blankId);
  return made.ok ? chartChanges(blank, made.blank) : null;
}
