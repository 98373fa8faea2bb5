import { SIDES, type Side } from '../garment/flat';

/**
 * A picture of a revision: one sealed drawing, the same over the shop's photograph, a drawing of what one person gets, or the line: one side of a garment in
 * every size shown, hung side by side.
 */
export type PictureName =
  | { readonly kind: 'scene'; readonly sha256: string }
  | { readonly kind: 'photograph'; readonly sha256: string }
  | { readonly kind: 'person'; readonly sha256: string }
  | { readonly kind: 'line'; readonly garmentId: string; readonly side: Side };

/** The name of a picture's file, as addresses end. */
export function pictureFileName(name: PictureName): string {
  switch (name.kind) {
    case 'scene':
      return `${name.sha256}.webp`;
    case 'photograph':
      return `photograph-${name.sha256}.webp`;
    case 'person':
      return `person-${name.sha256}.webp`;
    case 'line':
      return `line-${name.side}-${encodeURIComponent(name.garmentId)}.webp`;
  }
}

/** The picture a file name stands for, with its escapes resolved; null for anything that is not one. */
export function readPictureFileName(file: string): PictureName | null {
  const [, on, sha256] = /^(?:(photograph|person)-)?([0-9a-f]{64})\.webp$/.exec(file) ?? [];
  if (sha256) return { kind: on === 'photograph' || on === 'person' ? on : 'scene', sha256 };
  const [, said, garmentId] = /^line-([a-zA-Z]+)-(.{1,64})\.webp$/.exec(file) ?? [];
  const side = SIDES.find((each) => each === said);
  return side && garmentId ? { kind: 'line', garmentId, side } : null;
}
