import type { BlankStyle, StyleColour } from '@/lib/domain/garment/blank-style';
import { blankFromStyle, type StyleToHang } from '@/lib/domain/layout/blank-from-style';
import type { GarmentBlank, LayoutDocument } from '@/lib/domain/layout/document';

/** What a flat is drawn in while a blank has no colours: undyed cloth. */
export const UNDYED_HEX = '#F1E8D6';

/** The only garment of a layout that shows a blank by itself. */
export const DRAWN_ID = 'blank';

/** A style as it is drawn; null where its chart has no size yet. Throws for a chart that cannot be: it was checked when it was kept. */
export function blankToDraw(style: Omit<StyleToHang, 'cutToleranceUm'>): GarmentBlank | null {
  const made = blankFromStyle({ ...style, cutToleranceUm: { acrossUm: 0, longUm: 0 } }, { blankId: DRAWN_ID });
  if (made.ok) return made.blank;
  if (made.refusal.reason === 'noSizes') return null;
  throw new Error(`${style.name}: ${JSON.stringify(made.refusal)}`);
}

/** A layout with nothing in it but a blank in one of its colours. */
export function layoutOf(
  blank: GarmentBlank,
  { name }: Pick<BlankStyle, 'name'>,
  colour: Omit<StyleColour, 'colourId'> | undefined,
): Pick<LayoutDocument, 'garments' | 'prints'> {
  const cloth = colour ?? { name, hex: UNDYED_HEX, heather: false };
  return { garments: [{ garmentId: DRAWN_ID, name, cloth, blanks: [blank], counts: [] }], prints: [] };
}
