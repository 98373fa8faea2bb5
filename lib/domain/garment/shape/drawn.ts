import { close, endOf, joined, mirroredPath, type Path, reversedPath } from '../../geometry/path';
import type { ClothPart, FlatLine, FlatLineName, FlatPart } from '../flat';

/** What one shape adds to a flat: cloth in the order it is painted, and the lines over it. */
export type Drawn = { readonly parts: readonly FlatPart[]; readonly lines: readonly FlatLine[] };

export const NOTHING_DRAWN: Drawn = { parts: [], lines: [] };

/** Several shapes one over the other. */
export function stacked(...drawn: readonly Drawn[]): Drawn {
  return { parts: drawn.flatMap(({ parts }) => parts), lines: drawn.flatMap(({ lines }) => lines) };
}

/** The same shape cut from the garment's second cloth. */
export function inSecondCloth({ parts, lines }: Drawn): Drawn {
  return {
    parts: parts.map((each) => ({ ...each, second: true as const })),
    lines: lines.map((each) => ({ ...each, second: true as const })),
  };
}

/** One line across the garment. */
export function lineOf(line: FlatLineName, path: Path): FlatLine {
  return { line, path };
}

/** A line of the right half and its mirror image. */
export function pairOf(line: FlatLineName, path: Path): FlatLine[] {
  return bothSides(path).map((each) => ({ line, path: each }));
}

/** One piece across the garment. */
export function partOf(part: ClothPart, path: Path): FlatPart {
  return { part, path };
}

/** A piece of the right half and its mirror image. */
export function partPair(part: ClothPart, path: Path): FlatPart[] {
  return bothSides(path).map((each) => ({ part, path: each }));
}

/** The path and its mirror image across the centre line. */
export function bothSides(path: Path): [Path, Path] {
  return [path, mirroredPath(path)];
}

/** The run closed. */
export function closed(path: Path): Path {
  return [...path, close];
}

/** The closed shape made of a right half that runs from the centre line round to the centre line, and its mirror image. */
export function mirroredWhole(rightHalf: Path): Path {
  return closed(joined(rightHalf, mirroredPath(reversedPath(rightHalf))));
}

/** Both halves of a line that begins or ends on the centre line, from the viewer's right to the left. */
export function whole(rightHalf: Path): Path {
  const toCentre = Math.abs(endOf(rightHalf).x) < 1e-9 ? rightHalf : reversedPath(rightHalf);
  return joined(toCentre, reversedPath(mirroredPath(toCentre)));
}

/** A closed band across the centre line between two right-half lines that run from the side to the centre. */
export function band(upper: Path, lower: Path): Path {
  const right = joined(reversedPath(upper), lower);
  const left = joined(reversedPath(mirroredPath(lower)), mirroredPath(upper));
  return closed(joined(right, left));
}
