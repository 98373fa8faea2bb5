import { close, curve, line, move, type Path, type PathStep } from './path';
import type { Point } from './point';

const STEP = /([MLCZ])([^MLCZ]*)/g;

/** Reads back path data as `pathData` writes it: absolute M, L, C and Z only. Throws for anything else. */
export function pathFromData(d: string): Path {
  const steps = [...d.matchAll(STEP)].map(([, letter, numbers]) => stepFrom(letter ?? '', pointsOf(numbers ?? ''), d));
  if (steps.length === 0) throw new Error(`path data not understood: ${d.slice(0, 40)}`);
  return steps;
}

function stepFrom(letter: string, [first, second, third]: readonly Point[], d: string): PathStep {
  if (letter === 'Z') return close;
  if (letter === 'M' && first) return move(first);
  if (letter === 'L' && first) return line(first);
  if (letter === 'C' && first && second && third) return curve(first, second, third);
  throw new Error(`path data not understood: ${letter} in ${d.slice(0, 40)}`);
}

function pointsOf(numbers: string): Point[] {
  const values = numbers.trim() === '' ? [] : numbers.trim().split(/\s+/).map(Number);
  if (values.some((value) => !Number.isFinite(value))) throw new Error(`path data not understood: ${numbers}`);
  return values.flatMap((x, index) => (index % 2 === 0 ? [{ x, y: values[index + 1] ?? Number.NaN }] : []));
}
