import type { Spot } from '@/lib/domain/art/art-facts';
import type { Point } from '@/lib/domain/geometry/point';
import type { ShownPicture } from './fetch-preview';

/** An area is looked for in at most so many pixels each way. */
const MOST_SIDE = 240;
/** Colours nearer than this, of 255 in each channel together, are the backing's (by eye). */
const NEAR = 60;

/** The area each place is in, by its number in the list; the smallest where one lies within another. Null for none. */
export function areaAt(areas: readonly Spot[], point: Point): number | null {
  let found: number | null = null;
  for (const [index, area] of areas.entries()) {
    const known = found === null ? null : areas[found];
    if (isIn(area, point) && (!known || area.width * area.height < known.width * known.height)) found = index;
  }
  return found;
}

/**
 * A place inside an area of the backing's colour, px of the picture: the middle of its longest level run, since the middle
 * of its box may be something else (an O within an O). The middle of the box where the picture cannot be read.
 */
export async function placeInArea({ src, widthPx, heightPx }: ShownPicture, area: Spot, hex: string): Promise<Point> {
  const middle = { x: area.x + Math.floor(area.width / 2), y: area.y + Math.floor(area.height / 2) };
  const image = new Image();
  image.src = src;
  try {
    await image.decode();
  } catch {
    return middle;
  }
  const [width, height] = [Math.min(MOST_SIDE, area.width), Math.min(MOST_SIDE, area.height)];
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width, height });
  const drawing = canvas.getContext('2d', { willReadFrequently: true });
  if (!drawing) return middle;
  const [toCopyX, toCopyY] = [image.naturalWidth / widthPx, image.naturalHeight / heightPx];
  drawing.imageSmoothingEnabled = false;
  drawing.drawImage(
    image,
    area.x * toCopyX,
    area.y * toCopyY,
    area.width * toCopyX,
    area.height * toCopyY,
    0,
    0,
    width,
    height,
  );
  const run = longestRun(drawing.getImageData(0, 0, width, height), hex);
  if (!run) return middle;
  return {
    x: area.x + Math.floor(((run.x + run.length / 2) * area.width) / width),
    y: area.y + Math.floor(((run.y + 0.5) * area.height) / height),
  };
}

function longestRun({ data, width, height }: ImageData, hex: string): { x: number; y: number; length: number } | null {
  const wanted = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  let longest: { x: number; y: number; length: number } | null = null;
  for (let y = 0; y < height; y += 1) {
    let length = 0;
    for (let x = 0; x < width; x += 1) {
      const at = (y * width + x) * 4;
      const off = wanted.reduce((sum, value, channel) => sum + Math.abs(value - (data[at + channel] ?? 0)), 0);
      length = off < NEAR && (data[at + 3] ?? 0) > 127 ? length + 1 : 0;
      if (length > (longest?.length ?? 0)) longest = { x: x - length + 1, y, length };
    }
  }
  return longest;
}

function isIn({ x, y, width, height }: Spot, point: Point): boolean {
  return point.x >= x && point.x < x + width && point.y >= y && point.y < y + height;
}
