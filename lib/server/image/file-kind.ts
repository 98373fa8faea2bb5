import { fileTypeFromBuffer } from 'file-type';

/** Pictures made of pixels. */
export const RASTER_TYPES = ['image/png', 'image/jpeg', 'image/webp', 'image/tiff', 'image/avif', 'image/gif'] as const;
export type RasterMediaType = (typeof RASTER_TYPES)[number];

/** Files that the shop takes as art: pictures, and drawings that are made pixels of here. */
export const ART_TYPES = [...RASTER_TYPES, 'image/svg+xml', 'application/pdf'] as const;
export type ArtMediaType = (typeof ART_TYPES)[number];

export function isRaster(mediaType: ArtMediaType): mediaType is RasterMediaType {
  return RASTER_TYPES.some((each) => each === mediaType);
}

/** Whatever is taken at all is taken as art. */
export function isArt(_mediaType: ArtMediaType): _mediaType is ArtMediaType {
  return true;
}

export type FileKind =
  | { kind: 'art'; mediaType: ArtMediaType }
  /** Pictures as some phones take them, which no decoder here reads. */
  | { kind: 'heic' }
  /** A known kind that is not taken, by its usual name such as `PSD`. */
  | { kind: 'other'; name: string }
  /** Nothing known: text, or nonsense. */
  | { kind: 'unknown' };

/** What a file is by its first bytes; its name is not asked. */
export async function fileKind(bytes: Uint8Array): Promise<FileKind> {
  if (looksLikeSvg(bytes)) return { kind: 'art', mediaType: 'image/svg+xml' };
  const found = await fileTypeFromBuffer(bytes);
  if (!found) return looksLikePdf(bytes) ? { kind: 'art', mediaType: 'application/pdf' } : { kind: 'unknown' };
  const mime = found.mime === 'image/apng' ? 'image/png' : found.mime;
  const mediaType = ART_TYPES.find((each) => each === mime);
  if (mediaType) return { kind: 'art', mediaType };
  return /^image\/hei[cf]/.test(mime) ? { kind: 'heic' } : { kind: 'other', name: found.ext.toUpperCase() };
}

/** Text that has an `svg` element early on, in any of the encodings that XML is written in. */
function looksLikeSvg(bytes: Uint8Array): boolean {
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, 4_096)).replaceAll('\0', '');
  return /^[\s\u00ef\u00bb\u00bf\u00fe\u00ff]*</.test(head) && /<([\w-]+:)?svg[\s>]/i.test(head);
}

/** The first line may stand a little way in (ISO 32000-1, annex H, implementation note 13). */
function looksLikePdf(bytes: Uint8Array): boolean {
  return new TextDecoder('latin1').decode(bytes.subarray(0, 1_024)).includes('%PDF-');
}
