import type { ArtFacts } from '@/lib/domain/art/art-facts';
import { factsOfPixels } from '@/lib/domain/art/check/facts-of-pixels';
import type { PixelBytes } from '@/lib/domain/art/check/pixel-classes';
import { inkOfPixels } from '@/lib/domain/art/ink';

/** What is at a place, in pixels and parts of them: red, green, blue, and alpha from 0 to 255; null for nothing. */
export type Paint = (
  x: number,
  y: number,
) => readonly [red: number, green: number, blue: number, alpha?: number] | null;

/** A picture with smooth edges: each pixel is the mean of 4 × 4 places in it. */
export function painted(widthPx: number, heightPx: number, paint: Paint): PixelBytes {
  const rgba = new Uint8Array(widthPx * heightPx * 4);
  for (let y = 0; y < heightPx; y += 1) {
    for (let x = 0; x < widthPx; x += 1) rgba.set(meanOf(x, y, paint), (y * widthPx + x) * 4);
  }
  return { rgba, widthPx, heightPx };
}

function meanOf(x: number, y: number, paint: Paint): number[] {
  let [red, green, blue, alpha] = [0, 0, 0, 0];
  for (let part = 0; part < 16; part += 1) {
    const here = paint(x + ((part % 4) + 0.5) / 4, y + (Math.floor(part / 4) + 0.5) / 4);
    if (!here) continue;
    const [r, g, b, a = 255] = here;
    red += r * a;
    green += g * a;
    blue += b * a;
    alpha += a;
  }
  if (alpha === 0) return [0, 0, 0, 0];
  return [red / alpha, green / alpha, blue / alpha, alpha / 16].map(Math.round);
}

/** The facts of a picture that has ink. */
export function factsOf(pixels: PixelBytes): ArtFacts {
  const ink = inkOfPixels(pixels.rgba, pixels.widthPx, pixels.heightPx);
  if (!ink) throw new Error('factsOf: nothing was painted');
  return factsOfPixels(pixels, ink);
}

/** Whether a place lies on a band of some width along a line through a point at an angle. */
export function inBand(
  x: number,
  y: number,
  through: readonly [number, number],
  angle: number,
  width: number,
): boolean {
  const [dx, dy] = [x - through[0], y - through[1]];
  return Math.abs(dy * Math.cos(angle) - dx * Math.sin(angle)) <= width / 2;
}

/** The same numbers from 0 to 1 at every run. Source: the constants of Numerical Recipes; from memory. */
export function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
