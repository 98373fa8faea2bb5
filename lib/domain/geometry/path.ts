import { type Box, boxAround } from './box';
import { applyMatrix, type Matrix } from './matrix';
import { mirrored, type Point } from './point';

/** One step of a drawn path in absolute millimetres; curves are cubic Béziers. */
export type PathStep =
  | { readonly step: 'move'; readonly to: Point }
  | { readonly step: 'line'; readonly to: Point }
  | { readonly step: 'curve'; readonly c1: Point; readonly c2: Point; readonly to: Point }
  | { readonly step: 'close' };

/** A drawn path: one or more runs, each begun by a `move`. */
export type Path = readonly PathStep[];

export function move(to: Point): PathStep {
  return { step: 'move', to };
}
export function line(to: Point): PathStep {
  return { step: 'line', to };
}
export function curve(c1: Point, c2: Point, to: Point): PathStep {
  return { step: 'curve', c1, c2, to };
}
export const close: PathStep = { step: 'close' };

/** The path as SVG path data, coordinates in millimetres to a thousandth (a micrometre). */
export function pathData(path: Path): string {
  return path.map(stepData).join('');
}

function stepData(step: PathStep): string {
  switch (step.step) {
    case 'move':
      return `M${pair(step.to)}`;
    case 'line':
      return `L${pair(step.to)}`;
    case 'curve':
      return `C${pair(step.c1)} ${pair(step.c2)} ${pair(step.to)}`;
    case 'close':
      return 'Z';
  }
}

function pair({ x, y }: Point): string {
  return `${short(x)} ${short(y)}`;
}

function short(value: number): string {
  return String(Math.round(value * 1000) / 1000 + 0);
}

/** The path walked the other way: the right half's mirror image can then be joined to it. Takes a single open run. */
export function reversedPath(path: Path): Path {
  const first = path[0];
  if (first?.step !== 'move') throw new Error(`reversedPath: begins with ${first?.step ?? 'nothing'}`);
  const reversed: PathStep[] = [];
  let from = first.to;
  for (const step of path.slice(1)) {
    if (step.step === 'line') reversed.unshift(line(from));
    else if (step.step === 'curve') reversed.unshift(curve(step.c2, step.c1, from));
    else throw new Error(`reversedPath: cannot reverse a ${step.step}`);
    from = step.to;
  }
  return [move(from), ...reversed];
}

/** The path mirrored across the centre line x = 0. */
export function mirroredPath(path: Path): Path {
  return path.map(mirroredStep);
}

function mirroredStep(step: PathStep): PathStep {
  switch (step.step) {
    case 'move':
      return move(mirrored(step.to));
    case 'line':
      return line(mirrored(step.to));
    case 'curve':
      return curve(mirrored(step.c1), mirrored(step.c2), mirrored(step.to));
    case 'close':
      return step;
  }
}

/** The path as a map sends it. */
export function mappedPath(path: Path, matrix: Matrix): Path {
  const at = (point: Point) => applyMatrix(matrix, point);
  return path.map((step) => {
    if (step.step === 'close') return step;
    if (step.step === 'curve') return curve(at(step.c1), at(step.c2), at(step.to));
    return { ...step, to: at(step.to) };
  });
}

/** The second run joined on to the end of the first: its `move` becomes a line, or nothing where the ends meet. */
export function joined(first: Path, second: Path): Path {
  const [start, ...rest] = second;
  if (start?.step !== 'move') throw new Error(`joined: second run begins with ${start?.step ?? 'nothing'}`);
  const end = endOf(first);
  const meets = Math.hypot(end.x - start.to.x, end.y - start.to.y) < 1e-6;
  return meets ? [...first, ...rest] : [...first, line(start.to), ...rest];
}

/** Where a run ends. Throws for an empty or closed one. */
export function endOf(path: Path): Point {
  const last = path[path.length - 1];
  if (!last || last.step === 'close') throw new Error(`endOf: path ends with ${last?.step ?? 'nothing'}`);
  return last.to;
}

/** The path as straight pieces, each curve cut into `cuts`; one list of points a run, closed runs end where they began. */
export function flattened(path: Path, cuts = 32): Point[][] {
  const runs: Point[][] = [];
  let from: Point | null = null;
  for (const step of path) {
    const run = runs.at(-1);
    const start = run?.[0];
    if (step.step === 'move') runs.push([step.to]);
    else if (!(run && start && from)) throw new Error(`flattened: ${step.step} before a move`);
    else if (step.step === 'line') run.push(step.to);
    else if (step.step === 'close') run.push(start);
    else for (let cut = 1; cut <= cuts; cut += 1) run.push(cubicAt(from, step.c1, step.c2, step.to, cut / cuts));
    from = step.step === 'close' ? (start ?? null) : step.to;
  }
  return runs;
}

/** The box around everything drawn, within 0.05 mm for garment-sized curves. */
export function pathBox(path: Path): Box {
  return boxAround(flattened(path).flat());
}

/** The point at share `t` of a cubic Bézier (Bernstein form). */
export function cubicAt(p0: Point, p1: Point, p2: Point, p3: Point, t: number): Point {
  const u = 1 - t;
  const [w0, w1, w2, w3] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
  return {
    x: w0 * p0.x + w1 * p1.x + w2 * p2.x + w3 * p3.x,
    y: w0 * p0.y + w1 * p1.y + w2 * p2.y + w3 * p3.y,
  };
}
