import { svgPathProperties } from 'svg-path-properties';
import type { Flat, FlatLineName, FrozenFlat, Side } from '@/lib/domain/garment/flat';
import type { MeasureName } from '@/lib/domain/garment/measures';
import { type Path, pathData } from '@/lib/domain/geometry/path';

type DrawnPoint = { x: number; y: number };
type DrawnPath = InstanceType<typeof svgPathProperties>;

/** One measure taken again on one side, mm. */
export type TakenMeasure = { measure: MeasureName; side: Side; mm: number };

/**
 * Takes every measure again on a drawn side, as one would with a tape, mm: whatever of it that side shows. All lengths
 * and points come from svg-path-properties, an independent path library; nothing here asks the code that drew the flat.
 */
export function measuredAgain(flat: Flat): TakenMeasure[] {
  return takenOn(new DrawnFlat(flat)).map(([measure, mm]) => ({ measure, side: flat.side, mm }));
}

type Taken = [MeasureName, number];

function takenOn(drawn: DrawnFlat): Taken[] {
  if (drawn.side === 'leftSleeve' || drawn.side === 'rightSleeve') return onSleeve(drawn);
  if (drawn.has('rise')) return onLeg(drawn);
  if (drawn.has('brimSeam')) return onCap(drawn);
  if (drawn.has('bibEdge')) return onApron(drawn);
  return drawn.has('topEdge') ? onPanel(drawn) : onTop(drawn);
}

function onTop(drawn: DrawnFlat): Taken[] {
  const seam = drawn.first(drawn.has('collarSeam') ? 'collarSeam' : 'coveredSeam');
  const armhole = drawn.first('armhole');
  const hem = drawn.first('hem');
  const highPoint = rightEnd(seam);
  const [shoulder, underarm] = [start(armhole), end(armhole)];
  const isRaglan = !drawn.has('shoulderSeam') && !drawn.has('legEdge');
  return [
    ['bodyLength', (crossings(hem, 'x', highPoint.x)[0]?.y ?? lowest(hem)) - highPoint.y],
    ['chestWidth', drawn.bodyWidthAt(underarm.y + 25.4)],
    ['neckWidth', apart(start(seam), end(seam))],
    [drawn.side === 'front' ? 'frontNeckDrop' : 'backNeckDrop', lowest(seam) - highPoint.y],
    ['armhole', isRaglan ? apart(highPoint, underarm) : apart(shoulder, underarm)],
    ...(isRaglan ? [] : ([['acrossShoulder', 2 * shoulder.x]] satisfies Taken[])),
    ...sleeveBeside(drawn, isRaglan ? highPoint : shoulder),
    ...hemOf(drawn, hem),
    ...neckOf(drawn, seam),
    ...frontOf(drawn),
  ];
}

function sleeveBeside(drawn: DrawnFlat, from: DrawnPoint): Taken[] {
  if (!drawn.has('sleeveHem')) return [];
  const hem = drawn.first('sleeveHem');
  const taken: Taken[] = [
    ['sleeveLength', apart(from, start(hem))],
    ['sleeveOpening', apart(start(hem), end(hem))],
  ];
  return drawn.has('cuffSeam') ? [...taken, ['cuffRib', apart(start(drawn.first('cuffSeam')), start(hem))]] : taken;
}

function hemOf(drawn: DrawnFlat, hem: DrawnPath): Taken[] {
  if (drawn.has('legEdge')) {
    const leg = drawn.first('legEdge');
    return [
      ['hemWidth', 2 * end(drawn.first('sideSeam')).x],
      ['crotchWidth', apart(start(hem), end(hem))],
      ['legOpening', apart(start(leg), end(leg))],
    ];
  }
  const narrowest = smallest(drawn.first('sideSeam'), ({ x }) => x);
  return [
    ['hemWidth', apart(start(hem), end(hem))],
    ['waistWidth', 2 * narrowest],
    ...(drawn.has('ribSeam')
      ? ([['hemRib', apart(middle(drawn.first('ribSeam')), middle(hem))]] satisfies Taken[])
      : []),
  ];
}

function neckOf(drawn: DrawnFlat, seam: DrawnPath): Taken[] {
  if (drawn.has('hoodEdge')) return [['hoodFall', lowest(drawn.first('hoodEdge')) - lowest(seam)]];
  if (drawn.has('hoodSeam')) {
    const hood = drawn.part('hood');
    return [
      ['hoodHeight', lowest(seam) - highest(hood)],
      ['hoodWidth', widthOf(hood)],
    ];
  }
  if (drawn.side === 'back') {
    const top = Math.min(...crossings(drawn.outline, 'x', 0).map(({ y }) => y));
    return drawn.has('collarEdge') ? [['collarFall', lowest(drawn.first('collarEdge')) - top]] : [];
  }
  // The rib's free edge at the centre, to the nearest place of the seam.
  if (!drawn.has('collarSeam')) return [];
  const edge = middle(drawn.first('collarEdge'));
  return [['collarRib', smallest(seam, (point) => apart(point, edge))]];
}

function frontOf(drawn: DrawnFlat): Taken[] {
  const taken: Taken[] = [];
  if (drawn.has('placket')) {
    const placket = drawn.first('placket');
    taken.push(['placketLength', lowest(placket) - highest(placket)], ['placketWidth', widthOf(placket)]);
  }
  if (drawn.has('pocketEdge')) taken.push(...pocketOf(drawn));
  return taken;
}

/** A pocket's size over all its edges, which may be two halves. */
function pocketOf(drawn: DrawnFlat): Taken[] {
  const edges = drawn.all('pocketEdge');
  const [left, right] = [
    Math.min(...edges.map((edge) => smallest(edge, ({ x }) => x))),
    Math.max(...edges.map((edge) => -smallest(edge, ({ x }) => -x))),
  ];
  const foot = drawn.has('ribSeam') ? middle(drawn.first('ribSeam')).y : Math.max(...edges.map(lowest));
  return [
    ['pocketWidth', right - left],
    ['pocketHeight', foot - Math.min(...edges.map(highest))],
  ];
}

function onSleeve(drawn: DrawnFlat): Taken[] {
  const hem = drawn.first('sleeveHem');
  const foot = middle(hem);
  const top = Math.min(...crossings(drawn.outline, 'x', 0).map(({ y }) => y));
  const taken: Taken[] = [
    ['sleeveLength', foot.y - top],
    ['sleeveOpening', apart(start(hem), end(hem))],
  ];
  return drawn.has('cuffSeam') ? [...taken, ['cuffRib', apart(middle(drawn.first('cuffSeam')), foot)]] : taken;
}

function onLeg(drawn: DrawnFlat): Taken[] {
  const [rise, hem, waist] = [drawn.first('rise'), drawn.first('hem'), drawn.first('topEdge')];
  const outseamTop = start(drawn.first('outseam'));
  const foot = [start(hem), end(hem)].find(({ x }) => Math.sign(x) === Math.sign(outseamTop.x)) ?? start(hem);
  return [
    ['legLength', apart(outseamTop, foot)],
    ['thighWidth', drawn.bodyWidthAt(end(rise).y + 25.4)],
    ['rise', apart(start(rise), end(rise))],
    ['waistWidth', apart(start(waist), end(waist))],
    ['waistband', middle(drawn.first('waistSeam')).y - middle(waist).y],
    ['legOpening', apart(start(hem), end(hem))],
    ['cuffRib', middle(hem).y - middle(drawn.first('cuffSeam')).y],
  ];
}

function onCap(drawn: DrawnFlat): Taken[] {
  const [left, right] = drawn.all('panelSeam');
  if (!left || !right) throw new Error('a cap has two panel seams');
  const [brimSeam, brim] = [drawn.first('brimSeam'), drawn.first('brimEdge')];
  return [
    ['panelWidth', apart(end(left), end(right))],
    ['panelHeight', middle(brimSeam).y - highest(drawn.first('topEdge'))],
    ['brimWidth', widthOf(brim)],
    ['brimDepth', lowest(brim) - middle(brimSeam).y],
  ];
}

function onApron(drawn: DrawnFlat): Taken[] {
  const [top, scoop] = drawn.all('bibEdge');
  if (!top || !scoop) throw new Error('a bib has a top and sides');
  const pocketTop = Math.min(...drawn.all('pocketEdge').map(highest));
  return [
    ['bodyLength', lowest(drawn.first('hem')) - middle(top).y],
    ['panelWidth', widthOf(drawn.part('body'))],
    ['bibWidth', apart(start(top), end(top))],
    ['bibHeight', end(scoop).y - start(scoop).y],
    ['pocketDrop', pocketTop - middle(top).y],
    ...pocketOf(drawn),
  ];
}

function onPanel(drawn: DrawnFlat): Taken[] {
  const [top, hem] = [drawn.first('topEdge'), drawn.first('hem')];
  const taken: Taken[] = [
    ['panelWidth', apart(start(hem), end(hem))],
    ['panelHeight', lowest(hem) - middle(top).y],
  ];
  if (!drawn.has('strapEdge')) return taken;
  const [loop, right, left] = drawn.parts('strap');
  if (!loop || !right || !left) throw new Error('a bag has a handle with two ends');
  return [
    ...taken,
    ['handleLength', middle(top).y - highest(loop)],
    ['handleWidth', widthOf(right)],
    ['handleSpacing', midX(right) - midX(left)],
  ];
}

/** A drawn side, its lines and pieces as paths of the independent library. */
class DrawnFlat {
  readonly side: Side;
  readonly outline: DrawnPath;
  private readonly flat: Flat;

  constructor(flat: Flat) {
    this.flat = flat;
    this.side = flat.side;
    this.outline = drawnPath(flat.outline);
  }

  has(name: FlatLineName): boolean {
    return this.flat.lines.some(({ line }) => line === name);
  }

  all(name: FlatLineName): DrawnPath[] {
    return this.flat.lines.filter(({ line }) => line === name).map(({ path }) => drawnPath(path));
  }

  /** Of a pair, the line of the right half. */
  first(name: FlatLineName): DrawnPath {
    const [path] = this.all(name);
    if (!path) throw new Error(`no ${name} on the ${this.side}`);
    return path;
  }

  parts(name: Flat['parts'][number]['part']): DrawnPath[] {
    return this.flat.parts.filter(({ part }) => part === name).map(({ path }) => drawnPath(path));
  }

  part(name: Flat['parts'][number]['part']): DrawnPath {
    const [path] = this.parts(name);
    if (!path) throw new Error(`no ${name} on the ${this.side}`);
    return path;
  }

  /** Width of the body at a height, edge to edge. */
  bodyWidthAt(y: number): number {
    const xs = crossings(this.part('body'), 'y', y).map(({ x }) => x);
    return Math.max(...xs) - Math.min(...xs);
  }
}

function drawnPath(path: Path): DrawnPath {
  return new svgPathProperties(pathData(path));
}

/** Points along a drawn path, evenly by length. */
export function pointsAlong(path: DrawnPath, stepMm = 4): DrawnPoint[] {
  const length = path.getTotalLength();
  const count = Math.max(2, Math.ceil(length / stepMm));
  return Array.from({ length: count + 1 }, (_, index) => path.getPointAtLength((length * index) / count));
}

/** The smallest value along a drawn path: coarse steps first, then halving round the best of them. */
function smallest(path: DrawnPath, valueAt: (point: DrawnPoint) => number): number {
  const length = path.getTotalLength();
  const count = Math.max(8, Math.ceil(length / COARSE_MM));
  const at = (step: number) => valueAt(path.getPointAtLength((length * Math.min(count, Math.max(0, step))) / count));
  const values = Array.from({ length: count + 1 }, (_, step) => at(step));
  let best = values.indexOf(Math.min(...values));
  for (let reach = 0.5; reach * (length / count) > 0.01; reach /= 2) {
    best = [best - reach, best, best + reach].reduce((a, b) => (at(b) < at(a) ? b : a));
  }
  return at(best);
}

/** First steps along a path, mm; finer than any curve of a garment that matters here. */
const COARSE_MM = 14;

function start(path: DrawnPath): DrawnPoint {
  return path.getPointAtLength(0);
}

function end(path: DrawnPath): DrawnPoint {
  return path.getPointAtLength(path.getTotalLength());
}

/** Half-way along: on the centre line where a line runs from side to side. */
function middle(path: DrawnPath): DrawnPoint {
  return path.getPointAtLength(path.getTotalLength() / 2);
}

function rightEnd(path: DrawnPath): DrawnPoint {
  return start(path).x > end(path).x ? start(path) : end(path);
}

function lowest(path: DrawnPath): number {
  return -smallest(path, ({ y }) => -y);
}

function highest(path: DrawnPath): number {
  return smallest(path, ({ y }) => y);
}

function widthOf(path: DrawnPath): number {
  return -smallest(path, ({ x }) => -x) - smallest(path, ({ x }) => x);
}

function midX(path: DrawnPath): number {
  return (smallest(path, ({ x }) => x) - smallest(path, ({ x }) => -x)) / 2;
}

function apart(a: DrawnPoint, b: DrawnPoint): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** Every place where a drawn path has this coordinate: coarse steps first, then halving where the sign changes. */
export function crossings(path: DrawnPath, axis: 'x' | 'y', value: number): DrawnPoint[] {
  const length = path.getTotalLength();
  const count = Math.max(8, Math.ceil(length / COARSE_MM));
  const off = (at: number) => path.getPointAtLength(at)[axis] - value;
  const steps = Array.from({ length: count + 1 }, (_, step) => (length * step) / count);
  const offs = steps.map(off);
  return steps.slice(1).flatMap((to, index) => {
    let [low, high] = [steps[index] ?? 0, to];
    const [before, after] = [offs[index] ?? 0, offs[index + 1] ?? 0];
    if (before === 0) return [path.getPointAtLength(low)];
    if (after === 0 ? index < count - 1 : before * after > 0) return [];
    while (high - low > 0.002) {
      const middleOf = (low + high) / 2;
      if (off(middleOf) * before > 0) low = middleOf;
      else high = middleOf;
    }
    return [path.getPointAtLength((low + high) / 2)];
  });
}

/** A frozen flat's line by name. */
export function frozenLine(flat: FrozenFlat, name: FlatLineName): DrawnPath {
  const d = flat.lines.find(({ line }) => line === name)?.d;
  if (!d) throw new Error(`no ${name}`);
  return new svgPathProperties(d);
}
