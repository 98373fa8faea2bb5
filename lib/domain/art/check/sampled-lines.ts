import type { Spot } from '../art-facts';
import type { PixelWords } from './pixel-classes';

/** One row or column of an area as strengths, 0 to 255, with those a pixel to either side of it. */
export type SampledLine = { readonly line: Int16Array; readonly before: Int16Array; readonly after: Int16Array };

/**
 * Rows, or columns, of an area spread evenly over it, as what an eye would tell pixels apart by: how bright they are, and
 * where a picture has clear pixels, how clear first and how bright second. The buffers are used again for the next line.
 */
export function* sampledLines(
  pixels: PixelWords,
  area: Spot,
  along: 'rows' | 'columns',
  most: number,
  anyClear: boolean,
): Generator<SampledLine> {
  const [length, count] = along === 'rows' ? [area.width, area.height] : [area.height, area.width];
  const [line, before, after] = [new Int16Array(length), new Int16Array(length), new Int16Array(length)];
  const strength = anyClear ? strengthOfClear : brightness;
  const step = Math.max(1, Math.floor((count - 2) / most));
  for (let at = 1 + ((step - 1) >> 1); at < count - 1; at += step) {
    for (const [buffer, shift] of [
      [before, -1],
      [line, 0],
      [after, 1],
    ] as const) {
      readLine(pixels, area, along, at + shift, buffer, strength);
    }
    yield { line, before, after };
  }
}

function readLine(
  { words, widthPx }: PixelWords,
  area: Spot,
  along: 'rows' | 'columns',
  at: number,
  into: Int16Array,
  strength: (word: number) => number,
): void {
  const [start, stride] =
    along === 'rows' ? [(area.y + at) * widthPx + area.x, 1] : [area.y * widthPx + area.x + at, widthPx];
  for (let index = 0, from = start; index < into.length; index += 1, from += stride) {
    into[index] = strength(words[from] as number);
  }
}

/** Luma in 256ths. Source: Rec. ITU-R BT.601. */
function brightness(word: number): number {
  return (77 * (word & 255) + 150 * ((word >> 8) & 255) + 29 * ((word >> 16) & 255)) >> 8;
}

/** White ink on nothing is told from nothing, and from black ink. */
function strengthOfClear(word: number): number {
  const alpha = word >>> 24;
  return alpha - ((brightness(word) * alpha) >> 9);
}
