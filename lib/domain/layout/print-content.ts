import type { ArtRef } from '../art/art-ref';
import type { FontRef, Lettering } from '../lettering/lettering';
import type { LayoutDocument, Print, PrintContent } from './document';

type Shows = { readonly content: PrintContent };

/** The picture a print shows; null for lettering. */
export function artOf({ content }: Shows): ArtRef | null {
  return content.kind === 'art' ? content.art : null;
}

/** The lettering a print shows; null for a picture. */
export function letteringOf({ content }: Shows): Lettering | null {
  return content.kind === 'lettering' ? content.lettering : null;
}

/** The fonts that a layout's lettering asks for, each once. */
export function fontsUsed({ prints }: Pick<LayoutDocument, 'prints'>): FontRef[] {
  const fonts = prints.flatMap((print) => letteringOf(print)?.font ?? []);
  return [...new Map(fonts.map((font) => [font.sha256, font])).values()];
}

/** The prints of a layout that show lettering. */
export function letteringPrints({ prints }: Pick<LayoutDocument, 'prints'>): Print[] {
  return prints.filter(({ content }) => content.kind === 'lettering');
}

/** Whether two prints show the same: one picture, or words set in the same way. */
export function showsTheSame(a: PrintContent, b: PrintContent): boolean {
  if (a.kind === 'art') return b.kind === 'art' && a.art.artId === b.art.artId;
  return b.kind === 'lettering' && isSameLettering(a.lettering, b.lettering);
}

function isSameLettering(a: Lettering, b: Lettering): boolean {
  const said = ({ lines, font, hex, outline, ...rest }: Lettering) =>
    JSON.stringify([
      lines,
      font.sha256,
      hex.toUpperCase(),
      outline && [outline.hex.toUpperCase(), outline.widthUm],
      rest.trackingPermille,
      rest.letterCase,
      rest.align,
      rest.archPercent,
      rest.lineGapPercent,
      rest.squeezeFloorPercent,
    ]);
  return a === b || said(a) === said(b);
}
