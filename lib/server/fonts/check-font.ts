import { readFile } from 'node:fs/promises';
import { type Embedding, embeddingOf } from '@/lib/domain/lettering/embedding';
import type { ShapingFont } from '@/lib/domain/lettering/shaping/shaping-font';
import { type FontContainer, fontContainer, lackingTables } from './font-container';
import { type FontNames, fontNames } from './font-names';

/** Why a file cannot be used as a font. */
export type FontFault =
  | Exclude<FontContainer['kind'], 'font'>
  /** No table says which glyph stands for which character, or none stands for a letter or a figure. */
  | 'noCharacters'
  /** Made of pixels, or of pictures in colour: nothing to cut or print at a size. */
  | 'noOutlines'
  | 'mayNotEmbed';

export type CheckedFont =
  | ({ readonly ok: true; readonly embedding: Embedding } & FontNames)
  | { readonly ok: false; readonly reason: FontFault };

export type CheckFontRequest = { readonly path: string; readonly fileName: string };

/** Where fsType lies in the OS/2 table (OpenType 1.9). */
const FS_TYPE_OFFSET = 8;

/** Letters and figures that a font for names and numbers is tried on. */
const TRIED = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789';

/** Opens a file as a font and tries it. Says what is wrong with it; throws for nothing that a file can hold. */
export async function checkFont({ path, fileName }: CheckFontRequest): Promise<CheckedFont> {
  const bytes = await readFile(path);
  const container = fontContainer(bytes);
  if (container.kind !== 'font') return { ok: false, reason: container.kind };
  const { tables } = container;
  const os2 = tables.get('OS/2');
  const names = tables.get('name');
  if (!tables.has('cmap')) return { ok: false, reason: 'noCharacters' };
  if (!(tables.has('glyf') && tables.has('loca')) && !tables.has('CFF ') && !tables.has('CFF2')) {
    return { ok: false, reason: 'noOutlines' };
  }
  if (lackingTables(tables).length > 0 || !os2 || !names || os2.byteLength < FS_TYPE_OFFSET + 2) {
    return { ok: false, reason: 'damaged' };
  }
  const embedding = embeddingOf(new DataView(os2.buffer, os2.byteOffset).getUint16(FS_TYPE_OFFSET));
  if (embedding === 'restricted') return { ok: false, reason: 'mayNotEmbed' };
  const fault = await faultInUse(bytes);
  return fault ? { ok: false, reason: fault } : { ok: true, embedding, ...fontNames(names, fileName) };
}

/** What comes of setting the letters it has; a font of another script than Latin is tried on its own letters. */
async function faultInUse(bytes: Uint8Array): Promise<FontFault | null> {
  const { charactersOf, openFont } = await import('../text/open-font');
  const letters = [...TRIED, ...charactersOf(bytes)].filter((character) => /[\p{L}\p{N}]/u.test(character));
  try {
    const font = openFont(bytes);
    const had = letters.filter((letter) => font.hasAll(letter)).slice(0, MOST_TRIED);
    if (had.length === 0) return 'noCharacters';
    return had.some((letter) => isDrawn(font, letter)) ? null : 'noOutlines';
  } catch {
    return letters.length > TRIED.length ? 'damaged' : 'noCharacters';
  }
}

const MOST_TRIED = 200;

function isDrawn(font: ShapingFont, letter: string): boolean {
  const run = { text: letter, start: 0, end: letter.length, rightToLeft: false, script: null };
  return font.shape(run).some(({ glyphId }) => font.outline(glyphId).length > 0);
}
