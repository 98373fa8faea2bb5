/** Byte order marks and the encodings they stand for (XML 1.0, appendix F). */
const MARKS: readonly [readonly number[], string][] = [
  [[0xef, 0xbb, 0xbf], 'utf-8'],
  [[0xfe, 0xff], 'utf-16be'],
  [[0xff, 0xfe], 'utf-16le'],
];

/** The text of an XML file in the encoding it says it has; UTF-8 where it says none, or one that nobody knows. */
export function xmlText(bytes: Uint8Array): string {
  const marked = MARKS.find(([mark]) => mark.every((byte, index) => bytes[index] === byte))?.[1];
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, 200));
  const declared = /^\s*<\?xml[^>]*\bencoding\s*=\s*["']([\w.:-]+)["']/.exec(head)?.[1];
  return decoderOf(marked ?? declared ?? 'utf-8').decode(bytes);
}

function decoderOf(label: string): TextDecoder {
  try {
    return new TextDecoder(label);
  } catch {
    return new TextDecoder('utf-8');
  }
}
