import type { FontRef } from './lettering';

/** Set letters are measured in thousandths of the height of a flat capital: twice 1 000 units is twice the letter height. */
export const UNITS_A_CAP_HEIGHT = 1_000;

/** One step of an outline as SVG paths write it. Values are x, y pairs. */
export type OutlineStep = { readonly type: 'M' | 'L' | 'Q' | 'C' | 'Z'; readonly values: readonly number[] };

/** Where ink lies, thousandths of the letter height; x to the right, y down, the line that letters stand on at 0. */
export type InkBox = { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number };

/**
 * One letter as people count them, or several that the font draws as one: a base with its accents, a ligature. What
 * belongs together stays together when letters are spaced out or laid along an arch.
 */
export type SetLetter = {
  /** The characters it stands for. */
  readonly text: string;
  /** Where it begins, from where the line begins, thousandths of the letter height. */
  readonly x: number;
  /** How far on the next one begins. */
  readonly advance: number;
  /** Its outline with x measured from where the letter begins, y down, the line it stands on at 0. Empty for a space. */
  readonly outline: readonly OutlineStep[];
  /** True where it is written together with the letter on its right, as in Arabic: no space may come between the two. */
  readonly joinsNext: boolean;
};

/** Characters that were set in another font, because the one asked for has not got them. */
export type BorrowedText = { readonly text: string; readonly font: FontRef };

/** A line of text set in a font, from left to right as it is seen, in thousandths of the letter height. */
export type SetLine = {
  readonly letters: readonly SetLetter[];
  readonly advance: number;
  /** The box of all outlines, bows measured and not their handles; null where nothing is drawn. */
  readonly inkBox: InkBox | null;
  /** Characters that no font at hand has, each once. Nothing is drawn for them: what is asked for cannot be made. */
  readonly missing: readonly string[];
  /** What is drawn, but in another font than was asked for. */
  readonly borrowed: readonly BorrowedText[];
};

/** Sets type in the fonts it was loaded with, at once and without waiting. */
export type TypeEngine = {
  /**
   * Sets one line: kerning, ligatures, accents, right-to-left and joined scripts. `features` switches parts of the font on
   * and off as HarfBuzz writes them: `-liga`, `ss01`. Throws where the font was not among those the engine was loaded with.
   */
  readonly outlineLine: (text: string, font: FontRef, features?: readonly string[]) => SetLine;
  /** Whether the engine was loaded with the font. */
  readonly has: (font: FontRef) => boolean;
};

/** Opens an engine over the fonts, those that stand behind them for what they lack included. Rejects where one cannot be had. */
export type LoadTypeEngine = (fonts: readonly FontRef[]) => Promise<TypeEngine>;
