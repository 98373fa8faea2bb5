import { flattened, line, move, type Path, pathData } from '../geometry/path';
import { pathFromData } from '../geometry/path-data';
import type { Point } from '../geometry/point';
import type { ClothPart, FrozenFlat } from './flat';

/** Fibres of another tone in a heather cloth: path data in the flat's millimetres, to be stroked with the given dashes. */
export type HeatherFibres = {
  readonly tone: 'dark' | 'light';
  readonly d: string;
  readonly widthMm: number;
  readonly dashMm: readonly number[];
};

/** Lengths on a garment of the usual size, mm; see `weaveScale`. Between two courses with fibres of one tone: */
const COURSE_MM = 5;
/** A garment gets no more courses than this many. */
const MOST_COURSES = 130;
/** How far a course keeps from the edge of the cloth. */
const CLEAR_MM = 1.5;
/** A course ends up to this far in from there, so that fibres of one course never stand over those of the next. */
const ENDS_WITHIN_MM = 24;
/** A thread turns back into the next course where its end is no further off the cloth there than this. */
const TURNS_WITHIN_MM = 5;
/** The larger side of a garment of the usual size, mm. */
const USUAL_MM = 800;
const FIBRE_MM = 0.8;
/** Along each course, a fibre and a gap in turn, mm; uneven, and of another length for each tone, so that no pattern shows. */
const DASHES_MM = {
  dark: [6, 17, 3, 29, 9, 21, 2, 37, 7, 13, 4, 43],
  light: [5, 23, 8, 14, 3, 35, 7, 19],
} as const;
/** Straight pieces that a curve of the cloth's edge is looked at as. */
const CUTS = 20;

/** What shows no fibres: hardware. */
const BARE_PARTS: ReadonlySet<ClothPart> = new Set<ClothPart>(['metal', 'button']);

const known = new WeakMap<FrozenFlat['parts'], HeatherFibres[]>();

/**
 * The fibres of a heather cloth over those pieces of a flat that are cut from it: threads that run to and fro over it in
 * level courses and are drawn as two dashed paths, the same on every surface. The same flat always gives the same
 * fibres; there are none where all of it is cut from another cloth.
 */
export function heatherFibres({ parts, box }: Pick<FrozenFlat, 'parts' | 'box'>): HeatherFibres[] {
  const already = known.get(parts);
  if (already) return already;
  const pieces = parts.map(
    (each): Piece => ({
      isBare: each.second === true || BARE_PARTS.has(each.part),
      runs: flattened(pathFromData(each.d), CUTS),
    }),
  );
  const scale = weaveScale(box);
  const stepMm = Math.max(COURSE_MM * scale, box.height / MOST_COURSES);
  const fibres = (['dark', 'light'] as const).flatMap((tone, index): HeatherFibres[] => {
    const ys = Array.from({ length: Math.floor(box.height / stepMm) }, (_, course) => {
      const jitter = 0.4 * (chance(2 * course + index) - 0.5);
      return tenth(box.y + (course + 0.25 + 0.5 * index + jitter) * stepMm);
    });
    const threads = ys.reduce((begun: Thread[], y) => woven(begun, spansAt(pieces, y), y, scale), []);
    const dashMm = DASHES_MM[tone].map((mm) => tenth(mm * scale));
    const widthMm = tenth(FIBRE_MM * scale);
    return threads.length === 0 ? [] : [{ tone, d: pathData(threads.flatMap(threadPath)), dashMm, widthMm }];
  });
  known.set(parts, fibres);
  return fibres;
}

/** How fine the cloth of a smaller thing is drawn, which is shown larger: courses, fibres and gaps, as a share of the usual. */
function weaveScale({ width, height }: FrozenFlat['box']): number {
  return Math.min(1, (Math.max(width, height) / USUAL_MM) ** 0.75);
}

/** Corners of a thread; it grows by a course as long as the cloth goes on under it. */
type Thread = { readonly corners: Point[]; readonly reachedY: number };

/** The threads with one more course: each span of the cloth is run over by the thread that ends at it, or by a new one. */
function woven(threads: Thread[], spans: readonly Span[], y: number, scale: number): Thread[] {
  const lastY = Math.max(Number.NEGATIVE_INFINITY, ...threads.map(({ reachedY }) => reachedY));
  for (const [index, span] of spans.entries()) {
    const [from, to] = [span[0] + CLEAR_MM * scale, span[1] - CLEAR_MM * scale];
    const inset = chance(Math.round(y * 10) + 31 * index) * ENDS_WITHIN_MM * scale;
    if (to - from < 2 * ENDS_WITHIN_MM * scale) continue;
    const on = threads.findIndex(({ corners, reachedY }) => {
      const { x } = corners.at(-1) ?? { x: Number.NaN };
      return reachedY === lastY && Math.max(span[0] - x, x - span[1]) <= TURNS_WITHIN_MM * scale;
    });
    const thread = threads[on];
    const startX = Math.min(to, Math.max(from, thread?.corners.at(-1)?.x ?? from));
    const endX = startX < (from + to) / 2 ? to - inset : from + inset;
    const course = [startX, endX].map((x) => ({ x: tenth(x), y }));
    if (thread) threads[on] = { corners: [...thread.corners, ...course], reachedY: y };
    else threads.push({ corners: course, reachedY: y });
  }
  return threads;
}

function threadPath({ corners }: Thread): Path {
  return corners.map((corner, index) => (index === 0 ? move(corner) : line(corner)));
}

type Piece = { readonly isBare: boolean; readonly runs: readonly (readonly Point[])[] };
type Span = readonly [from: number, to: number];

/** Where the cloth lies uncovered at a height: pieces in the order they are painted, bare ones taking away from it. */
function spansAt(pieces: readonly Piece[], y: number): Span[] {
  let spans: Span[] = [];
  for (const { isBare, runs } of pieces) {
    const covered = crossedBy(runs, y);
    if (covered.length > 0) spans = isBare ? without(spans, covered) : merged(spans.concat(covered));
  }
  return spans;
}

/** The stretches of a level line inside closed runs, by where it goes in and out. */
function crossedBy(runs: readonly (readonly Point[])[], y: number): Span[] {
  const xs = runs
    .flatMap((run) =>
      run.slice(1).flatMap((b, index) => {
        const a = run[index] ?? b;
        return a.y > y === b.y > y ? [] : [a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y)];
      }),
    )
    .sort((a, b) => a - b);
  return xs.flatMap((from, index) => {
    const to = xs[index + 1];
    return index % 2 === 0 && to !== undefined ? [[from, to] as const] : [];
  });
}

function merged(spans: readonly Span[]): Span[] {
  const joined: Span[] = [];
  for (const [from, to] of [...spans].sort(([a], [b]) => a - b)) {
    const last = joined.at(-1);
    if (last && from <= last[1]) joined[joined.length - 1] = [last[0], Math.max(last[1], to)];
    else joined.push([from, to]);
  }
  return joined;
}

function without(spans: readonly Span[], holes: readonly Span[]): Span[] {
  return holes.reduce<Span[]>(
    (left, [from, to]) =>
      left.flatMap(([a, b]): Span[] => {
        if (to <= a || from >= b) return [[a, b]];
        return [...(from > a ? [[a, from] as const] : []), ...(to < b ? [[to, b] as const] : [])];
      }),
    [...spans],
  );
}

/** A number from 0 to 1 that looks like chance and is always the same for the same seed (an integer hash). */
function chance(seed: number): number {
  let hash = Math.imul(seed + 0x9e3779b9, 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return ((hash ^ (hash >>> 16)) >>> 0) / 2 ** 32;
}

function tenth(mm: number): number {
  return Math.round(mm * 10) / 10;
}
