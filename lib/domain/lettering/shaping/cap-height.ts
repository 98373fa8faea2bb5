import type { OutlineStep } from '../type-engine';
import { outlineBox } from './outline-box';

/** Offset of sCapHeight in the OS/2 table, version 2 and later (OpenType 1.9, OS/2 table). */
const CAP_HEIGHT_OFFSET = 88;

/** Letters to measure, the first that the font has: flat capitals, then figures for fonts that have nothing else. */
const MEASURED_LETTERS = ['H', 'E', 'I', 'X', '1', '0'] as const;

type Measurable = {
  readonly outlineOf: (letter: string) => readonly OutlineStep[] | null;
  /** The font's OS/2 table, if it has one. */
  readonly os2: Uint8Array | undefined;
};

/**
 * Height of a flat capital from its foot to its head, font units. Measured on the drawn letter, since what a font states
 * is missing in old ones and a guess in some; what it states stands in for a font without capitals and figures. Throws
 * where there is neither: nothing could be set to a height.
 */
export function measuredCapHeight({ outlineOf, os2 }: Measurable): number {
  for (const letter of MEASURED_LETTERS) {
    const box = outlineBox(outlineOf(letter) ?? []);
    if (box && box.maxY > box.minY) return box.maxY - box.minY;
  }
  const view = os2 && new DataView(os2.buffer, os2.byteOffset, os2.byteLength);
  const stated = view && view.byteLength > CAP_HEIGHT_OFFSET + 1 ? view.getInt16(CAP_HEIGHT_OFFSET) : 0;
  if (stated <= 0)
    throw new Error(`The font has no capital and states no height (OS/2 holds ${os2?.byteLength ?? 0} bytes).`);
  return stated;
}
