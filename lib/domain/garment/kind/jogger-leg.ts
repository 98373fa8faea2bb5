import { curve, mirroredPath, move, type Path, reversedPath } from '../../geometry/path';
import { mirrored, type Point } from '../../geometry/point';
import { mmFromUm } from '../../measure/length';
import type { Flat } from '../flat';
import type { KindDesign, Tape } from '../kind-design';
import { WIDTH_TAKEN_BELOW_UM } from '../measures';
import { assembled } from '../shape/assembled';
import { cuffBetween } from '../shape/cuff';
import { bent, beside, chained, straight, swept } from '../shape/curves';
import { closed, type Drawn, lineOf, partOf, stacked } from '../shape/drawn';
import { ribKnit } from '../shape/rib';
import { of } from './top-estimates';

/** How far the crotch reaches beyond the thigh, mm; for looks. */
const CROTCH_REACH_MM = 7;

/**
 * The wearer's left leg of a pair of joggers laid flat, the right leg folded away: seen on the front its outseam is at
 * the viewer's right. The centre line is the middle of the thigh. Waist width is that of one half: from the centre to the
 * outseam (proportions: common practice, no source).
 */
export const joggerLeg: KindDesign = {
  sides: ['front', 'back'],
  required: ['legLength', 'thighWidth'],
  estimates: {
    waistWidth: of('thighWidth', 12, 0.58),
    rise: (tape) => 60 + 0.32 * tape('thighWidth') + 0.13 * tape('legLength'),
    waistband: of('thighWidth', 22, 0.07),
    legOpening: of('thighWidth', 26, 0.26),
    cuffRib: of('thighWidth', 32, 0.1),
  },
  checks: [
    (tape) => (tape('legLength') > 6 * tape('thighWidth') ? { reason: 'tooLongForWidth', measure: 'legLength' } : null),
    (tape) =>
      tape('thighWidth') > tape('legLength') / 1.5 ? { reason: 'tooWideForLength', measure: 'thighWidth' } : null,
    (tape) =>
      tape('waistWidth') > tape('thighWidth') * 0.97 || tape('waistWidth') < tape('thighWidth') * 0.4
        ? { reason: 'waistOutOfLine', measure: 'waistWidth' }
        : null,
    (tape) =>
      tape('legOpening') > tape('thighWidth') * 0.95
        ? { reason: 'openingWiderThanSleeve', measure: 'legOpening' }
        : null,
    (tape) =>
      tape('rise') > tape('legLength') * 0.55 || tape('rise') < tape('thighWidth') * 0.7
        ? { reason: 'partTooLarge', measure: 'rise' }
        : null,
    (tape) => (tape('waistband') > tape('rise') * 0.4 ? { reason: 'partTooLarge', measure: 'waistband' } : null),
    (tape) => (tape('cuffRib') > tape('legLength') * 0.2 ? { reason: 'partTooLarge', measure: 'cuffRib' } : null),
  ],
  draw: (tape, side) => {
    const left = leftLegFront(tape, side);
    return side === 'front' ? left : turnedOver(left);
  },
};

/**
 * ```
 *  centre F___A outseam top, y = 0
 *        /    |
 *   K .-'     |   K: crotch
 *     |      /
 *      \    |
 *       '---'  cuff
 * ```
 */
function leftLegFront(tape: Tape, side: Flat['side']): Flat {
  const [thigh, opening] = [tape('thighWidth'), tape('legOpening')];
  const a = { x: thigh * 0.47, y: 0 };
  const f = { x: a.x - tape('waistWidth'), y: 0 };
  const k = crotch(tape, f);
  const widthY = k.y + mmFromUm(WIDTH_TAKEN_BELOW_UM);
  const out = a.x - opening / 2;
  const footY = Math.sqrt(tape('legLength') ** 2 - out ** 2);
  const [footOut, footIn] = [
    { x: opening / 2, y: footY },
    { x: -opening / 2, y: footY },
  ];
  const cuffY = footY - tape('cuffRib');
  const spill = Math.min(8, opening * 0.07);
  const [legOut, legIn] = [
    { x: footOut.x + spill, y: cuffY - spill },
    { x: footIn.x - spill, y: cuffY - spill },
  ];
  const [cuffOut, cuffIn] = [
    { x: footOut.x, y: cuffY },
    { x: footIn.x, y: cuffY },
  ];
  const outseam: Path = chained(
    [move(a), curve({ x: a.x + 2, y: k.y * 0.3 }, { x: thigh / 2, y: k.y * 0.62 }, { x: thigh / 2, y: widthY })],
    tapered({ x: thigh / 2, y: widthY }, legOut),
  );
  const inseam: Path = chained(
    swept(k, Math.PI / 2 - 0.5, 0.4, { x: -thigh / 2, y: widthY }, Math.PI / 2 - 0.02, 0.5),
    tapered({ x: -thigh / 2, y: widthY }, legIn),
  );
  const rise: Path = [
    move(f),
    curve({ x: f.x - (f.x - k.x) * 0.1, y: k.y * 0.5 }, { x: f.x - (f.x - k.x) * 0.3, y: k.y * 0.86 }, k),
  ];
  const spills = [
    swept(legOut, Math.PI / 2, 0.5, cuffOut, Math.PI, 0.3),
    swept(legIn, Math.PI / 2, 0.5, cuffIn, 0, 0.3),
  ] as const;
  const outline = closed(
    chained(
      straight(f, a),
      outseam,
      spills[0],
      straight(cuffOut, footOut, footIn, cuffIn),
      reversedPath(spills[1]),
      reversedPath(inseam),
      reversedPath(rise),
    ),
  );
  const drawn = stacked(
    { parts: [partOf('body', outline)], lines: [] },
    waistbandOf(tape, a, f),
    cuffBetween(straight(cuffOut, cuffIn), straight(footOut, footIn)),
    {
      parts: [],
      lines: [
        lineOf('rise', rise),
        lineOf('outseam', chained(outseam, spills[0])),
        lineOf('inseam', chained(inseam, spills[1])),
        lineOf('hem', straight(footOut, footIn)),
        ...(side === 'front' ? pocketOf(tape, a, k) : []),
        lineOf('fold', bent({ x: k.x + 12, y: k.y + 6 }, { x: thigh * 0.02, y: k.y + thigh * 0.14 }, -0.08)),
        lineOf('fold', bent({ x: k.x + 10, y: k.y - 8 }, { x: -thigh * 0.02, y: k.y - thigh * 0.16 }, 0.1)),
        lineOf('fold', bent({ x: legIn.x + 4, y: cuffY - 26 }, { x: legIn.x + opening * 0.5, y: cuffY - 40 }, 0.1)),
        lineOf('fold', bent({ x: legOut.x - 4, y: cuffY - 34 }, { x: legOut.x - opening * 0.45, y: cuffY - 22 }, 0.1)),
      ],
    },
  );
  return assembled(side, drawn, outline, { outseamTop: a, hemCentre: { x: 0, y: footY } });
}

/** Where the rise, straight from the waist, meets the inseam. */
function crotch(tape: Tape, f: Point): Point {
  const x = -tape('thighWidth') / 2 - CROTCH_REACH_MM;
  return { x, y: Math.sqrt(tape('rise') ** 2 - (f.x - x) ** 2) };
}

function tapered(from: Point, to: Point): Path {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return [
    move(from),
    curve({ x: from.x + dx * 0.02, y: from.y + dy * 0.3 }, { x: to.x - dx * 0.14, y: to.y - dy * 0.34 }, to),
  ];
}

function waistbandOf(tape: Tape, a: Point, f: Point): Drawn {
  const depth = tape('waistband');
  const edge = straight(f, a);
  const seam = straight({ x: f.x - 1.2, y: depth }, { x: a.x + 1, y: depth });
  return {
    parts: [partOf('rib', closed(chained(edge, reversedPath(seam))))],
    lines: [{ line: 'ribKnit', path: ribKnit(edge, seam, 8) }, lineOf('topEdge', edge), lineOf('waistSeam', seam)],
  };
}

/** The slanted opening of a pocket between waistband and outseam. */
function pocketOf(tape: Tape, a: Point, k: Point): Drawn['lines'] {
  const opening = bent(
    { x: a.x - tape('waistWidth') * 0.26, y: tape('waistband') },
    { x: tape('thighWidth') / 2 - 1, y: tape('waistband') + k.y * 0.55 },
    0.05,
  );
  return [lineOf('pocketEdge', opening), lineOf('stitch', beside(opening, 7))];
}

/** The same leg seen from behind. */
function turnedOver(flat: Flat): Flat {
  return assembled(
    flat.side,
    {
      parts: flat.parts.map((each) => ({ ...each, path: mirroredPath(each.path) })),
      lines: flat.lines.map((each) => ({ ...each, path: mirroredPath(each.path) })),
    },
    mirroredPath(flat.outline),
    Object.fromEntries(Object.entries(flat.points).map(([name, point]) => [name, mirrored(point)])),
  );
}
