import { type Box, boxAround, grownBox } from '../geometry/box';
import { close, line, move, pathData } from '../geometry/path';
import type { Point } from '../geometry/point';
import { formatLength } from '../measure/format-length';
import type { LengthUnit } from '../measure/length';
import type { Shape } from './scene';
import {
  LABEL_ASIDE_MM,
  LABEL_CAP_MM,
  LABEL_PAD_MM,
  type OutlineText,
  TAPE_INK_HEX,
  TAPE_WIDTH_MM,
  type Tape,
  tapeShapes,
} from './tape';

const CARD_HEX = '#FFFFFF';
/** So much of a tape must show beside a card that lies on it, mm. */
const SHOWING_MM = { upright: 18, level: 28 } as const;
/** How far a card keeps from ink, from other cards and from the edge of the picture, mm. */
const CLEAR_MM = 3;

/** What the tapes of one side are laid on. */
export type UnderTapes = {
  readonly unit: LengthUnit;
  readonly leaderHex: string;
  readonly outlineText: OutlineText;
  /** The ink of every print on that side, mm. */
  readonly inkBoxes: readonly Box[];
  /** What the picture shows, mm: no card reaches beyond it. */
  readonly frame: Box;
};

/** All tapes of a side with their readings on cards, each where it covers least, and the box around all of them, mm. */
export function laidTapes(tapes: readonly Tape[], under: UnderTapes): { shapes: Shape[]; boxes: Box[] } {
  const bars = tapes.map(barBox);
  const cards: Box[] = [];
  const labels = tapes.flatMap((tape, index) => {
    const text = formatLength(tape.um, under.unit);
    const capMm = LABEL_CAP_MM * tape.scale;
    const widthMm = under.outlineText(text, capMm, { x: 0, y: 0 }).widthMm;
    const size = { width: widthMm + 2 * LABEL_PAD_MM.x * tape.scale, height: capMm + 2 * LABEL_PAD_MM.y * tape.scale };
    const others = [...bars.slice(0, index), ...bars.slice(index + 1)];
    const clear = CLEAR_MM * tape.scale;
    const card = bestPlace(cardPlaces(tape, size, under.frame), ({ box, isOnTape }) => {
      const hidden = covered(box, under.inkBoxes, clear) + covered(box, cards, clear);
      return 3 * hidden + covered(box, isOnTape ? others : bars, 0);
    });
    cards.push(card);
    return cardShapes(card, text, capMm, widthMm, tape.scale, under.outlineText);
  });
  return {
    shapes: [...tapes.flatMap((tape) => tapeShapes(tape, under.unit, under.leaderHex)), ...labels],
    boxes: [...bars, ...cards],
  };
}

/** The tape itself, without its reading. */
function barBox({ from, to, scale }: Tape): Box {
  const half = (TAPE_WIDTH_MM / 2) * scale;
  const isUpright = Math.abs(to.x - from.x) < 1e-6;
  const box = boxAround([from, to]);
  return isUpright
    ? { x: box.x - half, y: box.y, width: 2 * half, height: box.height }
    : { x: box.x, y: box.y - half, width: box.width, height: 2 * half };
}

/** Where a card could stand: on its tape, or beside it. */
type Place = { readonly box: Box; readonly isOnTape: boolean };

/** Where a tape's card can stand, the usual place first; all of them within the frame. */
function cardPlaces(tape: Tape, size: Pick<Box, 'width' | 'height'>, frame: Box): Place[] {
  const { from, to, scale, labelAbove } = tape;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const isUpright = Math.abs(to.x - from.x) < 1e-6;
  const length = Math.abs(isUpright ? to.y - from.y : to.x - from.x);
  const aside = (TAPE_WIDTH_MM / 2 + LABEL_ASIDE_MM) * scale;
  const outwards = middle.x >= 0 ? 1 : -1;
  const level = (side: 1 | -1): Point => ({
    x: middle.x + side * ((isUpright ? 0 : length / 2) + aside + size.width / 2),
    y: middle.y,
  });
  const over = (side: 1 | -1): Point => ({ x: middle.x, y: middle.y + side * (aside + size.height / 2) });
  const fits = length - (isUpright ? size.height : size.width) >= SHOWING_MM[isUpright ? 'upright' : 'level'] * scale;
  // Beside an upright tape that is shorter than its card, the card gives way to what lies at the tape's end.
  const past = (to.y >= from.y ? -1 : 1) * Math.max(0, size.height / 2 + CLEAR_MM * scale - length / 2);
  const moved = ({ x, y }: Point): Point => ({ x, y: y + past });
  const around = isUpright
    ? [level(outwards), moved(level(outwards)), level(outwards > 0 ? -1 : 1), moved(level(outwards > 0 ? -1 : 1))]
    : [over(labelAbove ? -1 : 1), level(1), level(-1), over(labelAbove ? 1 : -1)];
  const place = (isOnTape: boolean) => (at: Point) => ({ box: inFrame(at, size, frame), isOnTape });
  return [...(fits ? [middle] : []).map(place(true)), ...around.map(place(false))];
}

function inFrame({ x, y }: Point, { width, height }: Pick<Box, 'width' | 'height'>, frame: Box): Box {
  const held = (start: number, length: number, from: number, room: number) =>
    Math.max(from, Math.min(start, from + room - length));
  return {
    x: held(x - width / 2, width, frame.x, frame.width),
    y: held(y - height / 2, height, frame.y, frame.height),
    width,
    height,
  };
}

/** The first place that hides nothing; otherwise the one that hides least: ink and other readings before tapes. */
function bestPlace(places: readonly Place[], costAt: (place: Place) => number): Box {
  const costs = places.map(costAt);
  const best = places[costs.indexOf(Math.min(...costs))];
  if (!best) throw new Error('a reading has no place to stand');
  return best.box;
}

/** How much of a box lies over others, each grown by `clear`; square millimetres. */
function covered(box: Box, others: readonly Box[], clear: number): number {
  return others.reduce((sum, other) => {
    const { x, y, width, height } = grownBox(other, clear);
    const across = Math.min(box.x + box.width, x + width) - Math.max(box.x, x);
    const down = Math.min(box.y + box.height, y + height) - Math.max(box.y, y);
    return sum + (across > 0 && down > 0 ? across * down : 0);
  }, 0);
}

function cardShapes(
  { x, y, width, height }: Box,
  text: string,
  capMm: number,
  textMm: number,
  scale: number,
  outlineText: OutlineText,
): Shape[] {
  const card = pathData([
    move({ x, y }),
    line({ x: x + width, y }),
    line({ x: x + width, y: y + height }),
    line({ x, y: y + height }),
    close,
  ]);
  const baseline = { x: x + (width - textMm) / 2, y: y + (height + capMm) / 2 };
  const stroke = { hex: TAPE_INK_HEX, widthMm: Math.round(140 * scale) / 100 };
  return [
    { kind: 'path', layer: 'tape', d: card, fill: CARD_HEX, stroke },
    { kind: 'glyphs', layer: 'tape', text, d: outlineText(text, capMm, baseline).d, fill: TAPE_INK_HEX },
  ];
}
