import { endOf, move, type Path, reversedPath } from '../../geometry/path';
import type { Tape } from '../kind-design';
import { bent, beside, chained, straight } from './curves';
import { closed, type Drawn, lineOf, mirroredWhole, NOTHING_DRAWN, pairOf, partOf, partPair, whole } from './drawn';
import type { OnBody } from './top-pieces';

/** Share of its width that a hand pocket keeps at its top. */
const TOP_SHARE = 0.64;
/** Share of its height at which its slanted openings end. */
const OPENING_SHARE = 0.68;
/** Distance of the stitching from the edge of an opening, mm. */
const STITCH_MM = 9;

/** A hand pocket across the front, standing on the rib: `pocketWidth` at its foot, `pocketHeight` tall. */
export function kangarooPocket(tape: Tape, body: OnBody): Drawn {
  if (body.side === 'back') return NOTHING_DRAWN;
  const { topEdge, opening, side, foot } = halfPocket(tape, body);
  const edge = chained(topEdge, opening, side);
  return {
    parts: [partOf('pocket', mirroredWhole(chained(edge, foot)))],
    lines: [
      lineOf('pocketEdge', whole(reversedPath(edge))),
      ...pairOf('stitch', beside(opening, STITCH_MM)),
      ...pairOf('stitch', beside(opening, STITCH_MM + 5)),
      lineOf('stitch', whole(beside(topEdge, 5))),
    ],
  };
}

/** The same in two halves, each `gapMm` from the centre line, for a garment that opens at the front. */
export function splitPocket(tape: Tape, body: OnBody, gapMm: number): Drawn {
  if (body.side === 'back') return NOTHING_DRAWN;
  const { topEdge, opening, side, foot } = halfPocket(tape, body);
  const bottom = endOf(foot);
  const top = { x: gapMm, y: endOf([...topEdge]).y };
  const inner = straight({ x: gapMm, y: bottom.y }, top);
  const edge = chained(straight(top, endOf(topEdge)), opening, side);
  return {
    parts: partPair('pocket', closed(chained(edge, straight(endOf(side), { x: gapMm, y: bottom.y }), inner))),
    lines: [
      ...pairOf('pocketEdge', edge),
      ...pairOf('stitch', beside(opening, STITCH_MM)),
      ...pairOf('stitch', beside(opening, STITCH_MM + 5)),
      ...pairOf('stitch', beside(straight(top, endOf(topEdge)), 5)),
    ],
  };
}

/** Right half: along the top, down the opening, down the side, back along the rib to the centre. */
function halfPocket(tape: Tape, { hem }: OnBody) {
  const footY = hem.centre.y - tape('hemRib');
  const topY = footY - tape('pocketHeight');
  const half = tape('pocketWidth') / 2;
  const topCorner = { x: half * TOP_SHARE, y: topY };
  const openingEnd = { x: half, y: topY + tape('pocketHeight') * OPENING_SHARE };
  // The rib seam rises a little towards the sides; the pocket's foot ends on it there.
  const corner = { x: half, y: footY - hem.riseAt(half) };
  const topEdge = straight({ x: 0, y: topY }, topCorner);
  const opening = bent(topCorner, openingEnd, 0.045);
  const side = straight(openingEnd, corner);
  const foot: Path = [move(corner), { step: 'line', to: { x: 0, y: footY } }];
  return { topEdge, opening, side, foot };
}
