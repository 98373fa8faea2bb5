import type { Spot } from '../art-facts';
import type { PixelWords } from './pixel-classes';

/** One row or column of an area as strengths, 0 to 255, and how much they change across it at a place. */
export type SampledLine = { readonly line: Int16Array; readonly changeAcross: (at: number) => number };

/**
 * What pixels are told apart by: how bright they are; where a picture has clear pixels, how clear first and how bright
 * second; or how warm.
 */
export type Strength = 'bright' | 'clear' | 'warm';

/**
 * Rows, or columns, of an area spread evenly over it, as what an eye would tell pixels apart by. The buffer is used again
 * for the next line.
 */
export function* sampledLines(
  { words, widthPx }: PixelWords,
  area: Spot,
  along: 'rows' | 'columns',
  most: number,
  by: Strength,
): Generator<SampledLine> {
  const [length, count] = along === 'rows' ? [area.width, area.height] : [area.height, area.width];
  const [stride, across] = along === 'rows' ? [1, widthPx] : [widthPx, 1];
  const line = new Int16Array(length);
  const strength = STRENGTHS[by];
  const step = Math.max(1, Math.floor((count - 2) / most));
  for (let at = 1 + ((step - 1) >> 1); at < count - 1; at += step) {
    const start = area.y * widthPx + area.x + at * across;
    let before = -1;
    let value = 0;
    for (let index = 0, from = start; index < length; index += 1, from += stride) {
      const word = words[from] as number;
      if (word !== before) value = strength(word);
      before = word;
      line[index] = value;
    }
    const changeAcross = (index: number) => {
      const here = start + index * stride;
      return Math.abs(strength(words[here - across] as number) - strength(words[here + across] as number)) / 2;
    };
    yield { line, changeAcross };
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

/** Red against blue, as strong as it is. */
function warmth(word: number): number {
  return (255 + (word & 255) - ((word >> 16) & 255)) >> 1;
}

const STRENGTHS: Readonly<Record<Strength, (word: number) => number>> = {
  bright: brightness,
  clear: strengthOfClear,
  warm: warmth,
};
