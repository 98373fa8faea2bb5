import type { FontRef } from '@/lib/domain/lettering/lettering';
import type { NamedFont } from '@/lib/domain/lettering/shaping/outline-line';
import { typeEngineOver } from '@/lib/domain/lettering/shaping/type-engine-over';
import type { TypeEngine } from '@/lib/domain/lettering/type-engine';
import { fontBytes } from '../fonts/font-bytes';
import { packagedFontsBehind } from '../fonts/packaged-fonts';

/** Opened fonts stay in memory: as many as a shop has in use at once, then the one unused longest is dropped. */
const MOST_OPEN_FONTS = 40;

const open = new Map<string, Promise<NamedFont>>();

/** Opens an engine over the fonts, with those behind them for what they lack. Rejects where a font's file is not there. */
export async function loadTypeEngine(fonts: readonly FontRef[]): Promise<TypeEngine> {
  const behind = packagedFontsBehind().map(({ ref }) => ref);
  const [asked, standing] = await Promise.all([Promise.all(fonts.map(opened)), Promise.all(behind.map(opened))]);
  return typeEngineOver(asked, standing);
}

async function opened(ref: FontRef): Promise<NamedFont> {
  const known = open.get(ref.sha256) ?? openNamed(ref);
  open.delete(ref.sha256);
  open.set(ref.sha256, known);
  const longestUnused = open.size > MOST_OPEN_FONTS ? open.keys().next().value : undefined;
  if (longestUnused !== undefined) open.delete(longestUnused);
  try {
    // The name is what the layout calls it, whatever another layout called the same file.
    return { ...(await known), ref };
  } catch (error) {
    open.delete(ref.sha256);
    throw error;
  }
}

async function openNamed(ref: FontRef): Promise<NamedFont> {
  const bytes = await fontBytes(ref.sha256);
  if (!bytes) throw new Error(`The font ${ref.family} ${ref.style} (${ref.sha256}) is not kept here.`);
  const { openFont } = await import('./open-font');
  return { ...openFont(bytes), ref };
}
