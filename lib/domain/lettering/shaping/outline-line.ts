import type { FontRef } from '../lettering';
import { type BorrowedText, type OutlineStep, type SetLetter, type SetLine, UNITS_A_CAP_HEIGHT } from '../type-engine';
import { boxOfBoth, outlineBox } from './outline-box';
import { type ShapedRun, shapeLine } from './shape-line';
import type { ShapedGlyph, ShapingFont } from './shaping-font';

/** A font that knows how a layout names it. */
export type NamedFont = ShapingFont & { readonly ref: FontRef };

/** Scripts whose letters hang from one line: they are written together whatever their font says. */
const HANGING_SCRIPTS: ReadonlySet<string> = new Set(['Deva', 'Beng', 'Guru']);

/** One line set in the first of the fonts, with the others behind it: see `TypeEngine.outlineLine`. */
export function outlineLine(text: string, fonts: readonly NamedFont[], features: readonly string[] = []): SetLine {
  const { runs, missing } = shapeLine(text, fonts, features);
  const letters: SetLetter[] = [];
  let x = 0;
  for (const letter of runs.flatMap(lettersOf)) {
    letters.push({ ...letter, x });
    x += letter.advance;
  }
  return {
    letters,
    advance: x,
    inkBox: letters.map(letterBox).reduce(boxOfBoth, null),
    missing,
    borrowed: borrowedFrom(runs, fonts[0]),
  };
}

type LetterOfRun = Omit<SetLetter, 'x'>;

/** A run's glyphs gathered into letters, left to right. */
function lettersOf(run: ShapedRun<NamedFont>): LetterOfRun[] {
  const scale = UNITS_A_CAP_HEIGHT / run.font.capHeight;
  const groups = byCluster(run.glyphs);
  return groups.map((glyphs, index) => {
    const outline: OutlineStep[] = [];
    let pen = 0;
    for (const glyph of glyphs) {
      outline.push(...placedOutline(run.font, glyph, pen, scale));
      pen += glyph.xAdvance * scale;
    }
    return {
      text: run.text.slice(...clusterSpan(run, groups, index)),
      advance: pen,
      outline,
      joinsNext: joinsNext(run, glyphs, groups[index + 1]),
    };
  });
}

function byCluster(glyphs: readonly ShapedGlyph[]): ShapedGlyph[][] {
  const groups: ShapedGlyph[][] = [];
  for (const glyph of glyphs) {
    const last = groups.at(-1);
    if (last?.[0]?.cluster === glyph.cluster) last.push(glyph);
    else groups.push([glyph]);
  }
  return groups;
}

/** From where to where in the text the characters of a group stand. */
function clusterSpan(run: ShapedRun<NamedFont>, groups: readonly ShapedGlyph[][], index: number): [number, number] {
  const start = clusterOf(groups[index]) ?? run.start;
  const writtenNext = clusterOf(groups[run.rightToLeft ? index - 1 : index + 1]);
  return [start, writtenNext ?? run.end];
}

function clusterOf(glyphs: readonly ShapedGlyph[] | undefined): number | undefined {
  return glyphs?.[0]?.cluster;
}

function joinsNext(
  run: ShapedRun<NamedFont>,
  glyphs: readonly ShapedGlyph[],
  onTheRight: readonly ShapedGlyph[] | undefined,
): boolean {
  if (!onTheRight) return false;
  if (run.script && HANGING_SCRIPTS.has(run.script)) return ![glyphs, onTheRight].some((group) => isSpace(run, group));
  const writtenLater = run.rightToLeft ? glyphs : onTheRight;
  return writtenLater.some(({ joined }) => joined);
}

function isSpace(run: ShapedRun<NamedFont>, glyphs: readonly ShapedGlyph[]): boolean {
  return run.text.charAt(clusterOf(glyphs) ?? run.start).trim() === '';
}

function placedOutline(font: ShapingFont, glyph: ShapedGlyph, pen: number, scale: number): OutlineStep[] {
  return font.outline(glyph.glyphId).map(({ type, values }) => ({
    type,
    values: values.map((value, index) =>
      index % 2 === 0 ? pen + (glyph.xOffset + value) * scale : 0 - (glyph.yOffset + value) * scale,
    ),
  }));
}

function letterBox({ outline, x }: SetLetter) {
  const box = outlineBox(outline);
  return box && { ...box, minX: box.minX + x, maxX: box.maxX + x };
}

function borrowedFrom(runs: readonly ShapedRun<NamedFont>[], asked: NamedFont | undefined): BorrowedText[] {
  return runs
    .filter(({ font }) => font !== asked)
    .map(({ text, start, end, font }) => ({ text: text.slice(start, end).trim(), font: font.ref }))
    .filter(({ text }) => text !== '');
}
