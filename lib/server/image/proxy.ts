import { writeFile } from 'node:fs/promises';
import { openPixels, type Pixels } from './quiet-sharp';

/** Longest side of the picture that screens get in place of art, px. */
export const PROXY_PX = 1500;

/** Writes the small picture that screens show in place of art; the art itself never leaves the server. */
export async function writeProxy(pixels: Pixels, path: string): Promise<void> {
  const small = openPixels(pixels).resize({
    width: PROXY_PX,
    height: PROXY_PX,
    fit: 'inside',
    withoutEnlargement: true,
  });
  await writeFile(path, await small.webp({ quality: 90, alphaQuality: 100 }).toBuffer());
}
