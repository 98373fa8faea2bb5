import { fileTypeFromBuffer } from 'file-type';

/** Picture files the shop takes. */
export type ArtMediaType = 'image/png' | 'image/jpeg';

export type FileKind =
  | { kind: 'art'; mediaType: ArtMediaType }
  /** A known kind that is not taken yet, by its usual name such as `WEBP`. */
  | { kind: 'other'; name: string }
  /** Nothing known: text, or nonsense. */
  | { kind: 'unknown' };

const ART_KINDS: Record<string, ArtMediaType> = {
  'image/png': 'image/png',
  'image/apng': 'image/png',
  'image/jpeg': 'image/jpeg',
};

/** What a file is by its first bytes; its name is not asked. */
export async function fileKind(bytes: Uint8Array): Promise<FileKind> {
  const found = await fileTypeFromBuffer(bytes);
  const mediaType = found && ART_KINDS[found.mime];
  if (mediaType) return { kind: 'art', mediaType };
  if (looksLikeSvg(bytes)) return { kind: 'other', name: 'SVG' };
  return found ? { kind: 'other', name: found.ext.toUpperCase() } : { kind: 'unknown' };
}

function looksLikeSvg(bytes: Uint8Array): boolean {
  return /<svg[\s>]/i.test(new TextDecoder('latin1').decode(bytes.subarray(0, 4_096)));
}
