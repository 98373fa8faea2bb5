/** What a file that should be a font is by its first bytes, and whether its tables lie inside it. */
export type FontContainer =
  | { readonly kind: 'font'; readonly tables: ReadonlyMap<string, Uint8Array> }
  | { readonly kind: 'woff' | 'woff2' | 'collection' | 'oldFont' | 'archive' | 'picture' | 'notAFont' | 'damaged' };

/** First bytes of a font that can be shaped: TrueType outlines, the same on old Macs, or CFF (OpenType 1.9, table directory). */
const FONT_TAGS: ReadonlySet<string> = new Set(['\0\x01\0\0', 'true', 'OTTO']);

/** First bytes of what people take for one. From the formats' own specifications. */
const OTHER_KINDS = [
  { kind: 'woff', begins: ['wOFF'] },
  { kind: 'woff2', begins: ['wOF2'] },
  { kind: 'collection', begins: ['ttcf'] },
  { kind: 'oldFont', begins: ['%!PS', '%!Fo', '\x80\x01', 'StartFontMetrics'] },
  { kind: 'archive', begins: ['PK\x03\x04', 'Rar!', '7z\xbc\xaf', '\x1f\x8b'] },
  {
    kind: 'picture',
    begins: ['\x89PNG', '\xff\xd8\xff', 'GIF8', 'RIFF', 'II*\0', 'MM\0*', 'BM', '<svg', '%PDF', '8BPS'],
  },
] as const;

/** Bytes of the table directory before its first entry, and of each entry (OpenType 1.9, table directory). */
const DIRECTORY_BYTES = 12;
const ENTRY_BYTES = 16;

/** Tables without which there is nothing to set type with (OpenType 1.9, required tables). */
const REQUIRED_TABLES = ['cmap', 'head', 'hhea', 'hmtx', 'maxp', 'name', 'OS/2'] as const;

/** Looks at a file's beginning and its table directory. No table's content is read. */
export function fontContainer(bytes: Uint8Array): FontContainer {
  const head = latin1(bytes.subarray(0, 32));
  if (!FONT_TAGS.has(head.slice(0, 4))) {
    const other = OTHER_KINDS.find(({ begins }) => begins.some((text) => head.startsWith(text)));
    return { kind: other?.kind ?? 'notAFont' };
  }
  const tables = tablesOf(bytes);
  return tables ? { kind: 'font', tables } : { kind: 'damaged' };
}

/** Names of required tables that a font lacks. */
export function lackingTables(tables: ReadonlyMap<string, Uint8Array>): string[] {
  return REQUIRED_TABLES.filter((name) => !tables.has(name));
}

/** Every table by its name; null where one lies outside the file. */
function tablesOf(bytes: Uint8Array): Map<string, Uint8Array> | null {
  if (bytes.byteLength < DIRECTORY_BYTES) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = view.getUint16(4);
  if (count === 0 || DIRECTORY_BYTES + count * ENTRY_BYTES > bytes.byteLength) return null;
  const tables = new Map<string, Uint8Array>();
  for (let index = 0; index < count; index += 1) {
    const entry = DIRECTORY_BYTES + index * ENTRY_BYTES;
    const offset = view.getUint32(entry + 8);
    const length = view.getUint32(entry + 12);
    if (offset + length > bytes.byteLength) return null;
    const name = latin1(bytes.subarray(entry, entry + 4));
    tables.set(name, bytes.subarray(offset, offset + length));
  }
  return tables;
}

/** One character a byte; a TextDecoder would read Windows-1252. */
function latin1(bytes: Uint8Array): string {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
}
