import { curve, endOf, move, type Path, pathBox, reversedPath } from '../../geometry/path';
import { along, type Point } from '../../geometry/point';
import type { Flat, Side } from '../flat';
import type { Tape } from '../kind-design';
import { bent, chained, straight } from './curves';
import { band, type Drawn, inSecondCloth, lineOf, mirroredWhole, pairOf, partOf, whole } from './drawn';
import { sleeveStitchRows } from './hem';
import { ribKnit } from './rib';
import type { SleeveEnd } from './top-pieces';

/** How far the hem of a sleeve rises at its folds, mm; for looks. */
const RISE_MM = 2;

/**
 * A set-in sleeve laid on its underarm seam, seen from its wearer's side. The fold from the end of the shoulder to the
 * hem is the centre line; the armhole seam runs round the cap. Half the girth shows: `sleeveOpening` at the hem.
 */
export function setInSleeveSide(tape: Tape, side: Side, end: SleeveEnd = 'hem'): Flat {
  const length = tape('sleeveLength');
  const bicep = Math.max(tape('armhole') * 0.9, tape('sleeveOpening') * 1.02);
  const capHeight = Math.min(tape('armhole') * 0.46, length * 0.6);
  const corner = { x: bicep / 2, y: capHeight };
  const cap: Path = [
    move({ x: 0, y: 0 }),
    curve({ x: bicep * 0.24, y: 0 }, { x: bicep * 0.35, y: capHeight * 0.62 }, corner),
  ];
  return sleeveSide(tape, side, cap, end);
}

/** The same with a knitted cuff. */
export function cuffedSleeveSide(tape: Tape, side: Side): Flat {
  return setInSleeveSide(tape, side, 'rib');
}

/** Half the width of a raglan sleeve at its top, where the neck seam crosses it, as a share of the neck width. */
const RAGLAN_TOP = 0.22;

/** A raglan sleeve laid the same way: its two seams run from the neck down to the underarm. */
export function raglanSleeveSide(tape: Tape, side: Side, end: SleeveEnd = 'hem'): Flat {
  const bicep = Math.max(tape('armhole') * 0.64, tape('sleeveOpening') * 1.02);
  const top = { x: tape('neckWidth') * RAGLAN_TOP, y: 4 };
  const corner = { x: bicep / 2, y: Math.min(tape('armhole') * 0.78, tape('sleeveLength') * 0.6) };
  const neck: Path = [move({ x: 0, y: 0 }), curve({ x: top.x * 0.4, y: 0 }, { x: top.x * 0.8, y: 1 }, top)];
  const seam: Path = [
    move(top),
    curve(
      { x: top.x + (corner.x - top.x) * 0.3, y: corner.y * 0.36 },
      { x: corner.x - (corner.x - top.x) * 0.14, y: corner.y * 0.76 },
      corner,
    ),
  ];
  const flat = sleeveSide(tape, side, seam, end, neck);
  return { ...flat, ...inSecondCloth(flat) };
}

function sleeveSide(tape: Tape, side: Side, seam: Path, end: SleeveEnd, above?: Path): Flat {
  const [length, opening] = [tape('sleeveLength'), tape('sleeveOpening')];
  const foot = { x: opening / 2, y: length - RISE_MM };
  const hem: Path = [
    move(foot),
    curve({ x: foot.x * 0.62, y: length - RISE_MM * 0.4 }, { x: foot.x * 0.3, y: length }, { x: 0, y: length }),
  ];
  const corner = endOf(seam);
  const depth = end === 'rib' ? tape('cuffRib') : 0;
  const spill = end === 'rib' ? Math.min(6, opening * 0.07) : 0;
  const gathered = { x: foot.x * 1.02 + spill, y: foot.y - depth - spill };
  const fold: Path = [
    move(corner),
    curve(
      { x: corner.x - (corner.x - gathered.x) * 0.2, y: corner.y + (gathered.y - corner.y) * 0.35 },
      { x: gathered.x + (corner.x - gathered.x) * 0.12, y: gathered.y - (gathered.y - corner.y) * 0.3 },
      gathered,
    ),
  ];
  const cuffTop = { x: foot.x * 1.02, y: foot.y - depth };
  const fallen =
    end === 'rib'
      ? chained(
          fold,
          [
            move(gathered),
            curve({ x: gathered.x, y: gathered.y + spill }, { x: cuffTop.x + spill * 0.4, y: cuffTop.y }, cuffTop),
          ],
          straight(cuffTop, foot),
        )
      : chained(fold, straight(gathered, foot));
  const top = above ? chained(above, seam) : seam;
  const outline = mirroredWhole(chained(top, fallen, hem));
  const cap: Drawn = {
    parts: [],
    lines: above
      ? [lineOf('collarSeam', whole(reversedPath(above))), ...pairOf('armhole', seam)]
      : [lineOf('armhole', whole(reversedPath(seam)))],
  };
  const ended = end === 'rib' ? cuff(hem, depth, cuffTop) : stitched(hem, length);
  return {
    side,
    parts: [partOf('body', outline), ...ended.parts],
    lines: [...cap.lines, ...ended.lines, lineOf('sleeveHem', whole(hem)), ...creases(corner, gathered)],
    outline,
    points: { shoulderPoint: { x: 0, y: 0 }, sleeveHemFold: { x: 0, y: length } },
    box: pathBox(outline),
  };
}

function cuff(hem: Path, depth: number, cuffTop: { x: number; y: number }): Drawn {
  const seam = movedUp(hem, depth, cuffTop.x);
  return {
    parts: [partOf('rib', band(seam, hem))],
    lines: [...pairOf('ribKnit', ribKnit(reversedPath(seam), reversedPath(hem))), lineOf('cuffSeam', whole(seam))],
  };
}

function stitched(hem: Path, lengthMm: number): Drawn {
  return { parts: [], lines: sleeveStitchRows(lengthMm).map((up) => lineOf('sleeveStitch', whole(movedUp(hem, up)))) };
}

/** The hem's curve higher up, as wide as `halfWidth` where given. */
function movedUp(hem: Path, up: number, halfWidth?: number): Path {
  const [start, step] = hem;
  if (start?.step !== 'move' || step?.step !== 'curve') throw new Error('a hem is one curve');
  const scale = halfWidth ? halfWidth / start.to.x : 1;
  const moved = ({ x, y }: { x: number; y: number }) => ({ x: x * scale, y: y - up });
  return [move(moved(start.to)), curve(moved(step.c1), moved(step.c2), moved(step.to))];
}

/** The crease a side that the cloth falls into from the underarm; for looks. */
function creases(corner: Point, gathered: Point) {
  const height = gathered.y - corner.y;
  const from = { x: corner.x - 2, y: corner.y + height * 0.04 };
  return pairOf('fold', bent(from, along(from, 2.25, Math.min(height * 0.36, corner.x * 0.5)), -0.08));
}
