import { svgPathProperties } from 'svg-path-properties';
import type { Flat, FlatLineName, FrozenFlat } from '@/lib/domain/garment/flat';
import type { MeasureName } from '@/lib/domain/garment/measures';
import { pathData } from '@/lib/domain/geometry/path';

type DrawnPoint = { x: number; y: number };
type DrawnPath = InstanceType<typeof svgPathProperties>;

/** The measures a crew tee has. */
export const TEE_MEASURES = [
  'bodyLength',
  'chestWidth',
  'sleeveLength',
  'acrossShoulder',
  'neckWidth',
  'frontNeckDrop',
  'backNeckDrop',
  'collarRib',
  'armhole',
  'sleeveOpening',
  'hemWidth',
] as const satisfies readonly MeasureName[];
type TeeMeasure = (typeof TEE_MEASURES)[number];

/**
 * Takes every measure of a tee again on its drawn paths, as one would with a tape, mm. All lengths and points come from
 * svg-path-properties, an independent path library; nothing here asks the code that drew the flat.
 */
export function measuredAgain(front: Flat, back: Flat): Record<TeeMeasure, number> {
  const right = (line: FlatLineName) => drawnLine(front, line, 0);
  const shoulder = right('shoulderSeam');
  const sleeveHem = right('sleeveHem');
  const armhole = right('armhole');
  const collar = drawnLine(front, 'collarSeam', 0);
  const backCollar = drawnLine(back, 'collarSeam', 0);
  const hem = drawnLine(front, 'hem', 0);
  const neckWidth = Math.abs(end(collar).x - start(collar).x);
  const highPointX = Math.max(start(collar).x, end(collar).x);
  const highPointY = start(collar).y;
  const shoulderPoint = end(shoulder);
  const underarm = end(armhole);
  return {
    bodyLength: crossingY(hem, highPointX) - highPointY,
    chestWidth: widthAt(front, underarm.y + 25.4),
    sleeveLength: apart(shoulderPoint, start(sleeveHem)),
    acrossShoulder: 2 * shoulderPoint.x,
    neckWidth,
    frontNeckDrop: lowest(collar) - highPointY,
    backNeckDrop: lowest(backCollar) - highPointY,
    collarRib: lowest(collar) - lowestRibEdge(front),
    armhole: apart(start(armhole), underarm),
    sleeveOpening: apart(start(sleeveHem), end(sleeveHem)),
    hemWidth: Math.abs(end(hem).x - start(hem).x),
  };
}

function drawnLine(flat: Flat, name: FlatLineName, index: number): DrawnPath {
  const path = flat.lines.filter(({ line }) => line === name)[index]?.path;
  if (!path) throw new Error(`no ${name}`);
  return new svgPathProperties(pathData(path));
}

/** Points along a drawn path, close enough that a straight piece between two of them is within 0.02 mm. */
export function pointsAlong(path: DrawnPath): DrawnPoint[] {
  const length = path.getTotalLength();
  const count = Math.max(2, Math.ceil(length / 2));
  return Array.from({ length: count + 1 }, (_, index) => path.getPointAtLength((length * index) / count));
}

function start(path: DrawnPath): DrawnPoint {
  return path.getPointAtLength(0);
}

function end(path: DrawnPath): DrawnPoint {
  return path.getPointAtLength(path.getTotalLength());
}

function lowest(path: DrawnPath): number {
  return Math.max(...pointsAlong(path).map(({ y }) => y));
}

function apart(a: DrawnPoint, b: DrawnPoint): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** Where a line that runs across crosses an upright at x. */
function crossingY(path: DrawnPath, x: number): number {
  return crossings(path, 'x', x)[0]?.y ?? Number.NaN;
}

/** Width of the body at a height, edge to edge of its drawn outline. */
function widthAt(flat: Flat, y: number): number {
  const body = flat.parts.find(({ part }) => part === 'body');
  if (!body) throw new Error('no body');
  const xs = crossings(new svgPathProperties(pathData(body.path)), 'y', y).map(({ x }) => x);
  return Math.max(...xs) - Math.min(...xs);
}

/** The rib's upper edge at the centre line. */
function lowestRibEdge(flat: Flat): number {
  const rib = flat.parts.find(({ part }) => part === 'rib');
  if (!rib) throw new Error('no rib');
  const ys = crossings(new svgPathProperties(pathData(rib.path)), 'x', 0).map(({ y }) => y);
  return Math.min(...ys);
}

/** Every place where a drawn path has this coordinate, found between the points along it. */
export function crossings(path: DrawnPath, axis: 'x' | 'y', value: number): DrawnPoint[] {
  const points = pointsAlong(path);
  return points.slice(1).flatMap((to, index) => {
    const from = points[index] ?? to;
    const [a, b] = [from[axis] - value, to[axis] - value];
    if (a === 0) return [from];
    if (b === 0) return index === points.length - 2 ? [to] : [];
    if (a * b > 0) return [];
    const t = a / (a - b);
    return [{ x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t }];
  });
}

/** A frozen flat's line by name. */
export function frozenLine(flat: FrozenFlat, name: FlatLineName): DrawnPath {
  const d = flat.lines.find(({ line }) => line === name)?.d;
  if (!d) throw new Error(`no ${name}`);
  return new svgPathProperties(d);
}
