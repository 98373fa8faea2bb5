/** Most bytes of a text file that is taken in. */
const MOST_BYTES = 1_000_000;

export type FileText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly reason: 'refused' | 'tooLong' };

/**
 * The text of a file a spreadsheet wrote: UTF-8, UTF-16 with its byte order mark, or Windows-1252, which older programs
 * write `½` and `£` in. Refused where it is none of them.
 */
export async function readFileText(file: File): Promise<FileText> {
  if (file.size > MOST_BYTES) return { ok: false, reason: 'tooLong' };
  const bytes = new Uint8Array(await file.arrayBuffer());
  const text = decoded(bytes, encodingOf(bytes));
  return text === null || text.includes('\0') ? { ok: false, reason: 'refused' } : { ok: true, text };
}

function encodingOf(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  return decoded(bytes, 'utf-8') === null ? 'windows-1252' : 'utf-8';
}

function decoded(bytes: Uint8Array, encoding: string): string | null {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
