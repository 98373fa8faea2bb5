import type { Spot } from '../art-facts';
import { INK_ALPHA } from '../ink';

/** A picture's pixels row by row, four bytes each: red, green, blue, alpha. */
export type PixelBytes = { readonly rgba: Uint8Array; readonly widthPx: number; readonly heightPx: number };

/** The same pixels as one number each, alpha highest, then blue, green, red. */
export type PixelWords = { readonly words: Uint32Array; readonly widthPx: number; readonly heightPx: number };

/** Does not print. */
export const CLEAR = 0;
/** Prints, and has the colour of the backing. */
export const BACKING = 1;
/** Prints, but little: less than half of an edge. */
export const FAINT = 2;
/** Prints for the greater part. */
export const FIRM = 3;
/** Prints fully. */
export const SOLID = 4;
export type PixelClass = typeof CLEAR | typeof BACKING | typeof FAINT | typeof FIRM | typeof SOLID;

/** Most of half an edge's coverage: a line one pixel wide that lies across two is still found. */
export const FIRM_ALPHA = 96;
/** From here on no eye tells a pixel from a solid one (common practice, no source). */
export const SOLID_ALPHA = 240;

/** The colour that was meant to be nothing, and from which difference on a pixel is drawn, and firmly. */
export type BackingRule = {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
  /** Greatest difference of a channel, 0 to 255, that still counts as backing. */
  readonly tolerance: number;
  /** Least difference of a channel from which a pixel is firmly drawn: half of an edge. */
  readonly firm: number;
};

/** Bytes as words, without a copy where they lie on a word's boundary. The machine's byte order is taken to be little. */
export function asWords({ rgba, widthPx, heightPx }: PixelBytes): PixelWords {
  if (rgba.length !== widthPx * heightPx * 4) {
    throw new Error(`asWords: ${rgba.length} bytes for ${widthPx} × ${heightPx} px`);
  }
  const whole = rgba.byteOffset % 4 === 0 ? rgba : rgba.slice();
  return { words: new Uint32Array(whole.buffer, whole.byteOffset, whole.length / 4), widthPx, heightPx };
}

/** The greatest difference of a channel between a pixel and a colour, 0 to 255. */
export function channelDifference(word: number, red: number, green: number, blue: number): number {
  const r = Math.abs((word & 255) - red);
  const g = Math.abs(((word >> 8) & 255) - green);
  const b = Math.abs(((word >> 16) & 255) - blue);
  return Math.max(r, g, b);
}

/** What a pixel is to the print. With a backing, how clear a pixel is matters only where it is nearly gone. */
export function classOf(word: number, backing: BackingRule | null): PixelClass {
  const alpha = word >>> 24;
  if (alpha < INK_ALPHA) return CLEAR;
  if (!backing) return alpha >= SOLID_ALPHA ? SOLID : alpha >= FIRM_ALPHA ? FIRM : FAINT;
  const difference = channelDifference(word, backing.red, backing.green, backing.blue);
  if (difference <= backing.tolerance) return BACKING;
  return difference >= backing.firm ? SOLID : FAINT;
}

/** Is told of every run of pixels of one class, row by row from the top, left to right; `end` is not part of the run. */
export type RunSink = {
  readonly run: (kind: PixelClass, start: number, end: number, y: number) => void;
  readonly endRow: (y: number) => void;
};

/**
 * Walks the pixels of an area once, or only those of every so many rows and columns. Coordinates are those of the whole
 * picture.
 */
export function walkRuns(
  { words, widthPx }: PixelWords,
  area: Spot,
  backing: BackingRule | null,
  every: number,
  sink: RunSink,
): void {
  const endX = area.x + area.width;
  const endY = area.y + area.height;
  for (let y = area.y; y < endY; y += every) {
    const row = y * widthPx;
    let start = area.x;
    let before = words[row + start] as number;
    let kind = classOf(before, backing);
    for (let x = start + every; x < endX; x += every) {
      // Flat colour is passed four pixels at a time.
      if (every === 1) while (x + 3 < endX && fourAre(words, row + x, before)) x += 4;
      if (x >= endX) break;
      const word = words[row + x] as number;
      if (word === before) continue;
      before = word;
      const next = classOf(word, backing);
      if (next === kind) continue;
      sink.run(kind, start, x, y);
      kind = next;
      start = x;
    }
    sink.run(kind, start, endX, y);
    sink.endRow(y);
  }
}

function fourAre(words: Uint32Array, index: number, word: number): boolean {
  const first = ((words[index] as number) ^ word) | ((words[index + 1] as number) ^ word);
  return (first | ((words[index + 2] as number) ^ word) | ((words[index + 3] as number) ^ word)) === 0;
}
