import sharp from 'sharp';

/** A box of whole pixels: left and top are its first, right and bottom one past its last. */
export type PixelBox = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

/**
 * A pixel counts from a quarter covered. A straight edge is then read at most 3/4 px too far out; read at half covered, the
 * tip of a turned corner, where less and less is covered, would be read almost a pixel too far in.
 */
const QUARTER_COVERED = 64;

/**
 * The box of each channel's ink in a print file, as sharp unpacks it. Every print in it has one channel lit and no other;
 * null for a channel that nothing uses.
 */
export async function inkBoxesByChannel(png: Uint8Array): Promise<(PixelBox | null)[]> {
  const { data, info } = await sharp(png).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  const boxes = [0, 1, 2].map(() => ({ left: info.width, top: info.height, right: -1, bottom: -1 }));
  for (let y = 0; y < info.height; y += 1) {
    for (let x = 0; x < info.width; x += 1) {
      const at = (y * info.width + x) * 4;
      if ((data[at + 3] ?? 0) < QUARTER_COVERED) continue;
      const box = boxes[[0, 1, 2].findIndex((channel) => (data[at + channel] ?? 0) > 127)];
      if (!box) continue;
      box.left = Math.min(box.left, x);
      box.right = Math.max(box.right, x + 1);
      box.top = Math.min(box.top, y);
      box.bottom = y + 1;
    }
  }
  return boxes.map((box) => (box.right < 0 ? null : box));
}
