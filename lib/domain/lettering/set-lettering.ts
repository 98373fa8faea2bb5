import { type Box, boxAround, grownBox } from '../geometry/box';
import { convexHull } from '../geometry/hull';
import type { Path, PathStep } from '../geometry/path';
import type { Point } from '../geometry/point';
import { type Micrometres, mmFromUm, UM_PER_MM } from '../measure/length';
import { type Arch, archOf, bent, bentPoint } from './arch';
import { inkPoints, placesAlongSides } from './ink-points';
import type { Lettering } from './lettering';
import { linePath } from './line-path';
import { type BorrowedText, type TypeEngine, UNITS_A_CAP_HEIGHT } from './type-engine';

/** How tall letters are asked to be, and the most they may take across. */
export type LetteringSize = { readonly capHeightUm: Micrometres; readonly mostAcrossUm: Micrometres };

/** Type set for a print, unturned, in millimetres: x = 0 in the middle, y = 0 at the top of the first line's capitals. */
export type SetLettering = {
  /** The lines as they are set. */
  readonly words: readonly string[];
  /** Every letter's outline, without the line round it; empty where nothing is to be set. */
  readonly path: Path;
  /** How far the line round every letter reaches beyond it; 0 without one. */
  readonly outlineMm: number;
  /** What prints, the line round the letters counted in; null where nothing does. */
  readonly inkBox: Box | null;
  readonly inkHull: readonly Point[];
  /**
   * What readings are taken of: as wide as the ink, from the top of the first line's capitals to the foot of the last's,
   * the line round them counted in. Accents and tails reach beyond, so that a name without any sits level with one that has them.
   */
  readonly letterHull: readonly Point[];
  /** The letter height they came to; less than asked for where the words were too long. */
  readonly capHeightUm: Micrometres;
  /** How wide they are of their own width, hundredths. */
  readonly squeezedPercent: number;
  readonly outcome: 'fits' | 'squeezed' | 'lowered';
  /** Characters that no font has, each once: the words cannot be printed. */
  readonly missing: readonly string[];
  /** What is set in another font, because the one asked for has not got it. */
  readonly borrowed: readonly BorrowedText[];
};

/**
 * Sets lines of words for a print. Too wide for what they may take across, all lines are squeezed alike down to the floor;
 * then all of it is set lower until it fits. The outline is never squeezed: it is as wide as it was asked for.
 */
export function setLettering(
  lettering: Lettering,
  size: LetteringSize,
  lines: readonly string[],
  engine: TypeEngine,
): SetLettering {
  const words = lines.map((each) => inCase(lettering, each));
  const set = words.map((each) => engine.outlineLine(each, lettering.font));
  const drawn = set.map((each) => ({ path: linePath(each, lettering.trackingPermille) }));
  const block = blockOf(lettering, drawn);
  const fitted = fittedTo(size, lettering, block);
  const laid = laidOut(block, lettering, size, fitted);
  const outlineMm = outlineOf(lettering);
  const ink = laid.path.length > 0 ? grownHull(convexHull(inkPoints(laid.path)), outlineMm) : [];
  const squeezedPercent = Math.round(fitted.squeeze * 100);
  return {
    words,
    path: laid.path,
    outlineMm,
    inkBox: ink.length > 0 ? boxAround(ink) : null,
    inkHull: ink,
    letterHull: laid.letterHull,
    capHeightUm: Math.floor(size.capHeightUm * fitted.lower),
    squeezedPercent,
    outcome: fitted.lower < 1 ? 'lowered' : squeezedPercent < 100 ? 'squeezed' : 'fits',
    missing: [...new Set(set.flatMap(({ missing }) => missing))],
    borrowed: set.flatMap(({ borrowed }) => borrowed),
  };
}

/** A line in the case it is set in. */
export function inCase({ letterCase }: Pick<Lettering, 'letterCase'>, line: string): string {
  return letterCase === 'upper' ? line.toUpperCase().normalize('NFC') : line;
}

/** Height of the block from the top of its first line's capitals to the foot of its last's, at a letter height. */
export function blockHeight(
  { lines, lineGapPercent }: Pick<Lettering, 'lines' | 'lineGapPercent'>,
  cap: number,
): number {
  return lines.length * cap + ((lines.length - 1) * lineGapPercent * cap) / 100;
}

/** One line in thousandths of the letter height: its path, its ink's points, and where its ink begins and ends. */
type DrawnLine = { readonly path: readonly PathStep[] };
type BlockLine = DrawnLine & { readonly points: readonly Point[]; readonly left: number; readonly width: number };
type Block = { readonly lines: readonly BlockLine[]; readonly width: number };

function blockOf({ align, archPercent }: Pick<Lettering, 'align' | 'archPercent'>, drawn: readonly DrawnLine[]): Block {
  const lines = drawn.map(({ path }) => {
    // Bent, a straight side reaches further than its ends.
    const points = archPercent === 0 ? inkPoints(path) : [...inkPoints(path), ...placesAlongSides(path)];
    const box = points.length > 0 ? boxAround(points) : { x: 0, width: 0 };
    return { path, points, inkLeft: box.x, width: box.width };
  });
  const width = Math.max(0, ...lines.map((each) => each.width));
  const share = { left: 0, centre: 0.5, right: 1 }[align];
  return {
    width,
    lines: lines.map(({ inkLeft, ...each }) => ({
      ...each,
      // Where x of the line has to go so that the block's middle is at 0.
      left: -width / 2 + (width - each.width) * share - inkLeft,
    })),
  };
}

function outlineOf({ outline }: Pick<Lettering, 'outline'>): number {
  return outline === null ? 0 : mmFromUm(outline.widthUm);
}

/** How far letters were squeezed and set lower, each as a share of what was asked. */
type Fitted = { readonly squeeze: number; readonly lower: number };

const AS_ASKED: Fitted = { squeeze: 1, lower: 1 };

/** Between the places that are measured, bent letters reach less than this share of the width beyond them: found by trying thousands. */
const BULGE_SHARE = 0.002;

/** How often an interval is halved while a bent line is fitted: to a 4 000th of its width. */
const HALVINGS = 12;

function fittedTo(size: LetteringSize, lettering: Lettering, block: Block): Fitted {
  const mostMm = Math.max(1 / UM_PER_MM, mmFromUm(size.mostAcrossUm) - 2 * outlineOf(lettering));
  const floor = lettering.squeezeFloorPercent / 100;
  const widthAt = (fitted: Fitted) => inkWidth(block, lettering, size, fitted);
  const bulgeMm = lettering.archPercent === 0 ? 0 : BULGE_SHARE * mostMm;
  const fits = (fitted: Fitted) => widthAt(fitted) + bulgeMm <= mostMm;
  if (fits(AS_ASKED)) return AS_ASKED;
  if (lettering.archPercent === 0) {
    const squeeze = mostMm / widthAt(AS_ASKED);
    return squeeze >= floor ? { squeeze, lower: 1 } : { squeeze: floor, lower: squeeze / floor };
  }
  if (fits({ squeeze: floor, lower: 1 })) {
    return { squeeze: greatest(floor, 1, (squeeze) => fits({ squeeze, lower: 1 })), lower: 1 };
  }
  const lower = greatest(0, 1, (share) => fits({ squeeze: floor, lower: share }));
  return { squeeze: floor, lower };
}

/** The greatest share in an interval that still fits; what fits is fitting all the way down. */
function greatest(from: number, to: number, fits: (share: number) => boolean): number {
  let [low, high] = [from, to];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}

function inkWidth(block: Block, lettering: Lettering, size: LetteringSize, fitted: Fitted): number {
  const frame = frameOf(lettering, size, fitted);
  if (!frame.arch) return block.width * frame.xScale;
  const { arch } = frame;
  let [least, most] = [0, 0];
  for (const [index, each] of block.lines.entries()) {
    const foot = footOf(frame, lettering, index);
    for (const { x, y } of each.points) {
      const placed = { x: (x + each.left) * frame.xScale, y: y * frame.yScale + foot };
      const at = bentPoint(placed, arch, frame.neutralY).x;
      least = Math.min(least, at);
      most = Math.max(most, at);
    }
  }
  return most - least;
}

/** The letter height of a fitting with the scales and the arc that come of it. */
type Frame = {
  readonly capMm: number;
  readonly heightMm: number;
  readonly xScale: number;
  readonly yScale: number;
  readonly neutralY: number;
  readonly arch: Arch | null;
};

function frameOf(lettering: Lettering, { capHeightUm, mostAcrossUm }: LetteringSize, fitted: Fitted): Frame {
  const capMm = mmFromUm(capHeightUm) * fitted.lower;
  const heightMm = blockHeight(lettering, capMm);
  const yScale = capMm / UNITS_A_CAP_HEIGHT;
  const arch = archOf(lettering.archPercent, mmFromUm(mostAcrossUm), heightMm);
  // Lengths half way up the block are kept, so that letters neither spread nor close up on the whole.
  return { capMm, heightMm, yScale, xScale: yScale * fitted.squeeze, neutralY: heightMm / 2, arch };
}

function footOf({ capMm }: Frame, { lineGapPercent }: Pick<Lettering, 'lineGapPercent'>, index: number): number {
  return capMm + index * capMm * (1 + lineGapPercent / 100);
}

function laidOut(block: Block, lettering: Lettering, size: LetteringSize, fitted: Fitted) {
  const frame = frameOf(lettering, size, fitted);
  const { arch, neutralY, heightMm, xScale, yScale } = frame;
  const flat = block.lines.flatMap(({ path, left }, index) => {
    const foot = footOf(frame, lettering, index);
    return path.map((step) => movedStep(step, ({ x, y }) => ({ x: (x + left) * xScale, y: y * yScale + foot })));
  });
  const outlineMm = outlineOf(lettering);
  const half = (block.width * xScale) / 2;
  const box = { x: -half, y: 0, width: 2 * half, height: heightMm };
  const letterHull = arch
    ? grownHull(convexHull(edgePoints(box).map((point) => bentPoint(point, arch, neutralY))), outlineMm)
    : cornersOf(grownBox(box, outlineMm));
  return { path: arch ? bent(flat, arch, neutralY) : flat, letterHull, capMm: frame.capMm };
}

function movedStep(step: PathStep, at: (point: Point) => Point): PathStep {
  if (step.step === 'close') return step;
  if (step.step === 'curve') return { ...step, c1: at(step.c1), c2: at(step.c2), to: at(step.to) };
  return { ...step, to: at(step.to) };
}

/** Places along the upper and the lower edge of a box that is bent. */
const ALONG_EDGE = 24;

function edgePoints({ x, y, width, height }: Box): Point[] {
  return Array.from({ length: ALONG_EDGE + 1 }, (_, index) => x + (width * index) / ALONG_EDGE).flatMap((at) => [
    { x: at, y },
    { x: at, y: y + height },
  ]);
}

function cornersOf({ x, y, width, height }: Box): Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}

/** Sides of the shape that stands for a round pen; its flats lie along both axes, so that boxes grow by exactly its reach. */
const PEN_SIDES = 16;

/** A convex hull with a round line of this reach drawn along it. */
function grownHull(hull: readonly Point[], byMm: number): Point[] {
  if (byMm === 0) return [...hull];
  const reach = byMm / Math.cos(Math.PI / PEN_SIDES);
  const pen = Array.from({ length: PEN_SIDES }, (_, side) => ((2 * side + 1) * Math.PI) / PEN_SIDES);
  return convexHull(
    hull.flatMap(({ x, y }) =>
      pen.map((angle) => ({ x: x + reach * Math.cos(angle), y: y + reach * Math.sin(angle) })),
    ),
  );
}
