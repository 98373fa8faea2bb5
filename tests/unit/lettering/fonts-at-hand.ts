import type { FontRef, Lettering } from '@/lib/domain/lettering/lettering';
import { offeredPackagedFonts } from '@/lib/server/fonts/packaged-fonts';

/** A font that comes with the app, by its family. */
export function shippedFont(family: string): FontRef {
  const found = offeredPackagedFonts().find(({ ref }) => ref.family === family);
  if (!found) throw new Error(`no font ${family} comes with the app`);
  return found.ref;
}

/** Lettering in a narrow bold font, all capitals, straight. */
export function letteringOf(lines: readonly string[], change: Partial<Lettering> = {}): Lettering {
  return {
    lines: [...lines],
    font: shippedFont('Oswald'),
    hex: '#FFFFFF',
    outline: null,
    trackingPermille: 0,
    letterCase: 'upper',
    align: 'centre',
    archPercent: 0,
    lineGapPercent: 40,
    squeezeFloorPercent: 70,
    ...change,
  };
}
