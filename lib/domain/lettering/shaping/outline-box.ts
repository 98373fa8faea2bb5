import type { InkBox, OutlineStep } from '../type-engine';

/** The box of outlines in their own units, bows measured and not their handles; null where there is none. */
export function outlineBox(steps: readonly OutlineStep[]): InkBox | null {
  const xs: number[] = [];
  const ys: number[] = [];
  let from: Pair = [0, 0];
  for (const { values } of steps) {
    const points = pairs(values);
    const to = points.at(-1);
    if (!to) continue;
    const bow = points.length > 1 ? [from, ...points] : [to];
    xs.push(...extremes(bow.map(([x]) => x)));
    ys.push(...extremes(bow.map(([, y]) => y)));
    from = to;
  }
  if (xs.length === 0) return null;
  return { minX: least(xs), minY: least(ys), maxX: greatest(xs), maxY: greatest(ys) };
}

/** The smallest box around two; either may be empty. */
export function boxOfBoth(one: InkBox | null, other: InkBox | null): InkBox | null {
  if (!one || !other) return one ?? other;
  return {
    minX: Math.min(one.minX, other.minX),
    minY: Math.min(one.minY, other.minY),
    maxX: Math.max(one.maxX, other.maxX),
    maxY: Math.max(one.maxY, other.maxY),
  };
}

type Pair = readonly [number, number];

function pairs(values: readonly number[]): Pair[] {
  const points: Pair[] = [];
  for (let index = 0; index + 1 < values.length; index += 2) {
    points.push([values[index] ?? 0, values[index + 1] ?? 0]);
  }
  return points;
}

/** The ends of a Bézier curve in one direction, and where it turns back between them. */
function extremes(controls: readonly number[]): number[] {
  const [a = 0, b = 0, c = 0, d = 0] = controls;
  if (controls.length === 1) return [a];
  if (controls.length === 3) {
    const turns = inside([(a - b) / (a - 2 * b + c)]);
    return [a, c, ...turns.map((t) => (1 - t) ** 2 * a + 2 * (1 - t) * t * b + t ** 2 * c)];
  }
  const turns = inside(roots(-a + 3 * b - 3 * c + d, 2 * (a - 2 * b + c), b - a));
  return [
    a,
    d,
    ...turns.map((t) => (1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * b + 3 * (1 - t) * t ** 2 * c + t ** 3 * d),
  ];
}

function inside(ts: readonly number[]): number[] {
  return ts.filter((t) => t > 0 && t < 1);
}

/** Where at² + bt + c is nothing. */
function roots(a: number, b: number, c: number): number[] {
  if (a === 0) return b === 0 ? [] : [-c / b];
  const under = b ** 2 - 4 * a * c;
  if (under < 0) return [];
  return [(-b + Math.sqrt(under)) / (2 * a), (-b - Math.sqrt(under)) / (2 * a)];
}

function least(values: readonly number[]): number {
  return values.reduce((one, other) => Math.min(one, other), Infinity);
}

function greatest(values: readonly number[]): number {
  return values.reduce((one, other) => Math.max(one, other), -Infinity);
}
