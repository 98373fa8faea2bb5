import type { Path } from '../../geometry/path';
import type { Tape } from '../kind-design';
import { circle, straight } from './curves';
import { closed, type Drawn, lineOf, NOTHING_DRAWN, pairOf, partOf } from './drawn';
import { collarTip } from './polo-collar';
import { rectangle } from './rectangle';
import type { OnBody } from './top-pieces';

/** From the centre line to where the tape of a zip is sewn in, mm: 1/2 in (common practice, no source). */
export const ZIP_TAPE_MM = 12.7;
const ZIP_TEETH_MM = 3.2;

/** A zip down the whole front, from a height down to the hem. */
export function zip(fromY: number, { side, hem }: OnBody): Drawn {
  if (side === 'back') return NOTHING_DRAWN;
  const upright = (x: number): Path => straight({ x, y: fromY }, { x, y: hem.centre.y });
  return {
    parts: [
      partOf('metal', rectangle({ x: -ZIP_TEETH_MM, y: fromY }, { x: ZIP_TEETH_MM, y: hem.centre.y })),
      partOf('metal', rectangle({ x: -4.5, y: fromY + 3 }, { x: 4.5, y: fromY + 14 })),
      partOf('metal', rectangle({ x: -2.6, y: fromY + 14 }, { x: 2.6, y: fromY + 40 })),
    ],
    lines: [
      lineOf('zip', upright(0)),
      ...pairOf('zip', upright(ZIP_TAPE_MM)),
      ...pairOf('stitch', upright(ZIP_TAPE_MM + 5)),
    ],
  };
}

/** A button stand from the neck seam down, `placketWidth` wide and `placketLength` long, with three buttons. */
export function placket(tape: Tape, { side }: OnBody): Drawn {
  if (side === 'back') return NOTHING_DRAWN;
  const [half, length, topY] = [tape('placketWidth') / 2, tape('placketLength'), tape('frontNeckDrop')];
  const foot = topY + length;
  const box = Math.min(12, length * 0.1);
  // The collar's leaves cover its upper corners.
  const tip = collarTip(tape);
  const seenFrom = (x: number) => ({ x, y: topY + ((tip.y - topY) * Math.abs(x)) / tip.x });
  const [neck, right, left] = [{ x: 0, y: topY }, seenFrom(half), seenFrom(-half)];
  const edge = straight(neck, right, { x: half, y: foot }, { x: -half, y: foot }, left, neck);
  const buttons = [0.12, 0.46, 0.78].map((share) => ({ x: 0, y: topY + length * share }));
  return {
    parts: [partOf('collar', closed(edge)), ...buttons.map((at) => partOf('button', circle(at, 5.5)))],
    lines: [
      lineOf('placket', edge),
      ...pairOf('stitch', straight(seenFrom(half - 4), { x: half - 4, y: foot - box })),
      lineOf('stitch', straight({ x: -half + 4, y: foot - box }, { x: half - 4, y: foot - box })),
      ...buttons.map((at) => lineOf('button', circle(at, 5.5))),
    ],
  };
}
