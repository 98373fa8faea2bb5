import type { Box } from '@/lib/domain/geometry/box';
import type { Point } from '@/lib/domain/geometry/point';

/** A straight piece of a guide, mm on the flat. */
export type GuideLine = { readonly from: Point; readonly to: Point };

/** A place along one axis where a box lies in line with others: where its left or top edge comes, mm, and what shows it. */
export type Alignment = {
  readonly axis: 'x' | 'y';
  readonly kind: 'edge' | 'centre' | 'gap';
  readonly atMm: number;
  readonly guides: readonly GuideLine[];
};

/** How far a guide reaches past what it lines up, mm (by eye). */
const PAST_MM = 8;

/**
 * Where a box comes to lie in line with its neighbours: its edges and its middle with theirs, and as far from the next as
 * those lie from each other. Gaps are taken along rows and columns that the box lies in now.
 */
export function alignmentsWith(box: Box, others: readonly Box[]): Alignment[] {
  return AXES.flatMap((axis) => [
    ...others.flatMap((other) => inLine(axis, box, other)),
    ...evenlySpaced(axis, box, others),
  ]);
}

const AXES = ['x', 'y'] as const;
type Axis = (typeof AXES)[number];

/** A box seen along one axis: where it starts and how long it is there, and the same across. */
type Span = { readonly start: number; readonly length: number; readonly from: number; readonly to: number };

function spanOf(axis: Axis, { x, y, width, height }: Box): Span {
  return axis === 'x'
    ? { start: x, length: width, from: y, to: y + height }
    : { start: y, length: height, from: x, to: x + width };
}

function pointAt(axis: Axis, along: number, across: number): Point {
  return axis === 'x' ? { x: along, y: across } : { x: across, y: along };
}

function inLine(axis: Axis, box: Box, other: Box): Alignment[] {
  const [mine, theirs] = [spanOf(axis, box), spanOf(axis, other)];
  const [from, to] = [Math.min(mine.from, theirs.from) - PAST_MM, Math.max(mine.to, theirs.to) + PAST_MM];
  const shares = [
    { share: 0.5, kind: 'centre' as const },
    { share: 0, kind: 'edge' as const },
    { share: 1, kind: 'edge' as const },
  ];
  return shares.map(({ share, kind }) => {
    const line = theirs.start + theirs.length * share;
    const guides = [{ from: pointAt(axis, line, from), to: pointAt(axis, line, to) }];
    return { axis, kind, atMm: line - mine.length * share, guides };
  });
}

function evenlySpaced(axis: Axis, box: Box, others: readonly Box[]): Alignment[] {
  const mine = spanOf(axis, box);
  const row = others
    .map((other) => spanOf(axis, other))
    .filter(({ from, to }) => from < mine.to && to > mine.from)
    .sort((a, b) => a.start - b.start);
  return row.slice(1).flatMap((after, index) => {
    const before = row[index];
    if (!before) return [];
    const between = { from: before.start + before.length, to: after.start };
    const gap = between.to - between.from;
    const placed = (start: number, ...gaps: readonly (readonly [number, number])[]): Alignment => ({
      axis,
      kind: 'gap',
      atMm: start,
      guides: gaps.map(([from, to]) => gapGuide(axis, from, to, (mine.from + mine.to) / 2)),
    });
    const end = after.start + after.length;
    const even = (gap - mine.length) / 2;
    return [
      ...(gap > 0 ? [placed(end + gap, [between.from, between.to], [end, end + gap])] : []),
      ...(gap > 0
        ? [placed(before.start - gap - mine.length, [before.start - gap, before.start], [between.from, between.to])]
        : []),
      ...(even > 0
        ? [placed(between.from + even, [between.from, between.from + even], [between.to - even, between.to])]
        : []),
    ];
  });
}

function gapGuide(axis: Axis, from: number, to: number, across: number): GuideLine {
  return { from: pointAt(axis, from, across), to: pointAt(axis, to, across) };
}
