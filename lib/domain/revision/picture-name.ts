import { SIDES, type Side } from '../garment/flat';

/**
 * A picture of a revision: one sealed drawing, or the line: one side of a garment in every size shown, hung side by side.
 */
export type PictureName =
  | { readonly kind: 'scene'; readonly sha256: string }
  | { readonly kind: 'line'; readonly garmentId: string; readonly side: Side };

/** The name of a picture's file, as addresses end. */
export function pictureFileName(name: PictureName): string {
  return name.kind === 'scene' ? `${name.sha256}.webp` : `line-${name.side}-${encodeURIComponent(name.garmentId)}.webp`;
}

/** The picture a file name stands for, with its escapes resolved; null for anything that is not one. */
export function readPictureFileName(file: string): PictureName | null {
  const sha256 = /^([0-9a-f]{64})\.webp$/.exec(file)?.[1];
  if (sha256) return { kind: 'scene', sha256 };
  const [, said, garmentId] = /^line-([a-zA-Z]+)-(.{1,64})\.webp$/.exec(file) ?? [];
  const side = SIDES.find((each) => each === said);
  return side && garmentId ? { kind: 'line', garmentId, side } : null;
}
