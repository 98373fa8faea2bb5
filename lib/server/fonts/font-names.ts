/** Family and style as a font's own name table says them. */
export type FontNames = { readonly family: string; readonly style: string };

/** Name ids, the first that is there: the typographic names, then the older pair (OpenType 1.9, name table). */
const FAMILY_IDS = [16, 1] as const;
const STYLE_IDS = [17, 2] as const;

const LONGEST_FAMILY = 120;
const LONGEST_STYLE = 60;
const UNNAMED_STYLE = 'Regular';

/** Windows and Unicode names are UTF-16; the Macintosh's, where they are in Latin letters, are read as Latin-1. */
const UTF16_PLATFORMS: ReadonlySet<number> = new Set([0, 3]);
/** Windows' number for English (United States), preferred where a font has its name in several languages. */
const ENGLISH = 0x0409;

/** Reads the name table; the file's own name stands in for a family that is not there. Names are tidied to one line. */
export function fontNames(nameTable: Uint8Array, fileName: string): FontNames {
  const names = readNames(nameTable);
  const first = (ids: readonly number[]) => ids.map((id) => names.get(id)).find((name) => name !== undefined);
  const family = first(FAMILY_IDS) ?? tidied(fileName.replace(/\.[^.]*$/, ''), LONGEST_FAMILY);
  return {
    family: tidied(family, LONGEST_FAMILY) || 'Font',
    style: tidied(first(STYLE_IDS) ?? '', LONGEST_STYLE) || UNNAMED_STYLE,
  };
}

/** Every name by its id, English where there is a choice. */
function readNames(table: Uint8Array): Map<number, string> {
  const names = new Map<number, string>();
  if (table.byteLength < 6) return names;
  const view = new DataView(table.buffer, table.byteOffset, table.byteLength);
  const count = Math.min(view.getUint16(2), Math.floor((table.byteLength - 6) / 12));
  const storage = view.getUint16(4);
  for (let index = 0; index < count; index += 1) {
    const entry = 6 + index * 12;
    const [platform, language, id] = [view.getUint16(entry), view.getUint16(entry + 4), view.getUint16(entry + 6)];
    const start = storage + view.getUint16(entry + 10);
    const end = start + view.getUint16(entry + 8);
    if (end > table.byteLength) continue;
    const text = decoded(table.subarray(start, end), UTF16_PLATFORMS.has(platform));
    if (text !== '' && (!names.has(id) || language === ENGLISH)) names.set(id, text);
  }
  return names;
}

function decoded(bytes: Uint8Array, isUtf16: boolean): string {
  return new TextDecoder(isUtf16 ? 'utf-16be' : 'latin1').decode(bytes).trim();
}

function tidied(text: string, longest: number): string {
  const line = text.normalize('NFC').replace(/[\p{Cc}\p{Cf}\s]+/gu, ' ');
  return Array.from(line.trim()).slice(0, longest).join('').trim();
}
