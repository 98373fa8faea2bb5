import type { StyleColour } from '@/lib/domain/garment/blank-style';
import type { StarterChart } from '@/lib/domain/garment/chart/chart';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import { blankFromStyle, type StyleToHang, styleOfChart } from '@/lib/domain/layout/blank-from-style';
import type { GarmentBlank } from '@/lib/domain/layout/document';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { loadBlank } from '@/lib/server/blanks/load-blank';
import type { GarmentEditRefusal } from './edit-garments';

const STARTER = 'starter:';
const BLANK = 'blank:';

/** A style that can be hung under a garment, wherever it is from. */
export type HangableStyle = {
  readonly style: StyleToHang;
  readonly colours: readonly StyleColour[];
  /** Its id in the shop's list, where it is from there. */
  readonly shopBlankId?: string;
};

/** How a form names a starter chart. */
export function starterStyleId({ id }: Pick<StarterChart, 'id'>): string {
  return `${STARTER}${id}`;
}

/** How a form names a blank of the shop's list. */
export function blankStyleId(blankId: string): string {
  return `${BLANK}${blankId}`;
}

/** The blank of the shop's list that a form names; undefined for a starter chart. */
export function shopBlankIdOf(styleId: string): string | undefined {
  return styleId.startsWith(BLANK) ? styleId.slice(BLANK.length) : undefined;
}

/** What a starter chart's garments are called: `Crew tee, youth`. */
export function starterName(locale: Locale, { kind, ageBand }: Pick<StarterChart, 'kind' | 'ageBand'>): string {
  const t = translatorFor(locale, 'garment-words');
  return t('kindAndBand', { band: ageBand, kind: t(`kind.${kind}`) });
}

/** The style a form names; null when the shop has it no longer. Starter charts are of the fabric given. */
export async function loadStyle(
  maker: MakerAccess,
  locale: Locale,
  styleId: string,
  fabric: string,
): Promise<HangableStyle | null> {
  if (styleId.startsWith(STARTER)) {
    const chart = starterChart(styleId.slice(STARTER.length));
    return chart ? { style: styleOfChart(chart, { name: starterName(locale, chart), fabric }), colours: [] } : null;
  }
  const shopBlankId = shopBlankIdOf(styleId);
  const blank = shopBlankId === undefined ? null : await loadBlank(maker, shopBlankId);
  return blank ? { style: blank.style, colours: blank.style.colours, shopBlankId: blank.blankId } : null;
}

/** A style as a blank of a layout, or why it cannot be drawn and where that is mended. */
export function blankOf(
  locale: Locale,
  { style, shopBlankId }: HangableStyle,
  blankId: string,
): { ok: true; blank: GarmentBlank } | ({ ok: false } & GarmentEditRefusal) {
  const made = blankFromStyle(style, { blankId, shopBlankId });
  if (made.ok) return made;
  const detail = { name: style.name, ...(shopBlankId !== undefined && { mendAt: `/blanks/${shopBlankId}` }) };
  if (made.refusal.reason === 'noSizes') return { ok: false, reason: 'noSizes', detail };
  const t = translatorFor(locale, 'garment-words');
  const { reason, measure } = made.refusal.refusal;
  const why = t(`refusal.${reason}`, { measure: t(`measure.${measure}`) });
  return { ok: false, reason: 'impossible', detail: { ...detail, size: made.refusal.sizeLabel, why } };
}
