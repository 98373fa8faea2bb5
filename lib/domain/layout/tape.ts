import type { FrozenFlat } from '../garment/flat';
import type { Box } from '../geometry/box';
import { close, line, move, type Path, pathData } from '../geometry/path';
import { distance, type Point } from '../geometry/point';
import { formatLength } from '../measure/format-length';
import { type LengthUnit, type Micrometres, mmFromUm, UM_PER_CM, UM_PER_INCH, UM_PER_MM } from '../measure/length';
import type { Print, SizeKey } from './document';
import { LOCATIONS } from './locations';
import { placedPrint, type Shape } from './scene';
import { groupFor } from './sizes';

/** A tape laid between two points to show a reading. */
export type Tape = {
  readonly printId: string;
  readonly reading: 'drop' | 'across' | 'width';
  readonly um: Micrometres;
  readonly from: Point;
  readonly to: Point;
  /** Fine dashed lines from the tape's ends to what it measures, where it lies beside it. */
  readonly leaders: readonly (readonly [Point, Point])[];
  /** True where its reading stands above a level tape instead of under it: beside a print that is measured up. */
  readonly labelAbove?: boolean;
};

/** Text as outlines: path data in mm with the origin at the left end of the baseline, y down, and its set width. */
export type OutlinedText = { readonly d: string; readonly widthMm: number };
/** Turns words into outlines at a cap height; placed so that the baseline's left end is at `at`. */
export type OutlineText = (text: string, capHeightMm: number, at: Point) => OutlinedText;

/**
 * Sizes of a drawn tape, mm on the garment: a reading's capitals are 2.5 % of the width of a large tee with its sleeves,
 * 8 px where that is shown 350 px wide on a phone.
 */
export const TAPE_WIDTH_MM = 22;
const LABEL_CAP_MM = 23;
const LABEL_PAD_MM = { x: 9, y: 8 };
const LABEL_HEIGHT_MM = LABEL_CAP_MM + 2 * LABEL_PAD_MM.y;
/** A tape shorter than this carries its reading beside it: `3 3/8 in` needs so much. */
const LABEL_ON_TAPE_FROM_MM = 150;
const LABEL_ASIDE_MM = 4;
const GAP_MM = 12;
const END_MM = 2.6;
const TAPE_HEX = '#F5C73A';
const TAPE_INK_HEX = '#1B1A15';
const TAPE_END_HEX = '#8C929C';
const CARD_HEX = '#FFFFFF';

/** The tapes that show a print's readings on one size: drop, width, and across where it is off the centre line. */
export function tapesFor(print: Print, size: SizeKey, flat: FrozenFlat): Tape[] {
  const group = groupFor(print, size);
  const { inkBox, measuredFrom } = placedPrint(print, size, flat);
  const { printId } = print;
  const middleX = inkBox.x + inkBox.width / 2;
  // Where the drop is measured up to the print's foot, its tape lies under the print and the others above.
  const labelAbove = LOCATIONS[print.locationId].direction === 'up';
  const away = labelAbove ? -1 : 1;
  const edgeY = labelAbove ? inkBox.y : inkBox.y + inkBox.height;
  const widthMm = mmFromUm(group.widthUm);
  const widthY = edgeY + away * (GAP_MM + TAPE_WIDTH_MM / 2);
  const width: Tape = {
    printId,
    reading: 'width',
    um: group.widthUm,
    from: { x: middleX - widthMm / 2, y: widthY },
    to: { x: middleX + widthMm / 2, y: widthY },
    leaders: [],
    ...(labelAbove && { labelAbove }),
  };
  const drop = dropTape(print, group.dropUm, inkBox, measuredFrom);
  if (group.acrossUm === 0) return [drop, width];
  const labelUnderWidth = widthMm < LABEL_ON_TAPE_FROM_MM ? LABEL_ASIDE_MM + LABEL_HEIGHT_MM : 0;
  const underWidthY = widthY + away * (TAPE_WIDTH_MM / 2 + labelUnderWidth);
  const acrossY = underWidthY + away * (GAP_MM + Math.max(TAPE_WIDTH_MM, LABEL_HEIGHT_MM) / 2);
  const across: Tape = {
    printId,
    reading: 'across',
    um: Math.abs(group.acrossUm),
    from: { x: 0, y: acrossY },
    to: { x: middleX, y: acrossY },
    leaders: [
      [
        { x: 0, y: measuredFrom.y },
        { x: 0, y: acrossY },
      ],
      [
        { x: middleX, y: underWidthY },
        { x: middleX, y: acrossY },
      ],
    ],
    ...(labelAbove && { labelAbove }),
  };
  return [drop, width, across];
}

/** The drop's tape: over the middle of the print, or beside it where the drop is taken to the print's middle. */
function dropTape(print: Print, dropUm: Micrometres, inkBox: Box, measuredFrom: Point): Tape {
  const beside = LOCATIONS[print.locationId].edge === 'middle';
  const middleX = inkBox.x + inkBox.width / 2;
  const outwards = middleX >= 0 ? 1 : -1;
  const dropX = beside ? middleX + outwards * (inkBox.width / 2 + GAP_MM + TAPE_WIDTH_MM / 2) : middleX;
  const referenceX = beside ? outwards * Math.abs(measuredFrom.x) : measuredFrom.x;
  const edgeY = measuredFrom.y + mmFromUm(dropUm);
  const from = { x: dropX, y: measuredFrom.y };
  const to = { x: dropX, y: edgeY };
  const toReference = [{ x: referenceX, y: measuredFrom.y }, from] as const;
  const toMiddle = [{ x: middleX, y: edgeY }, to] as const;
  return {
    printId: print.printId,
    reading: 'drop',
    um: LOCATIONS[print.locationId].direction === 'up' ? -dropUm : dropUm,
    from,
    to,
    leaders: [...(Math.abs(dropX - referenceX) > 1 ? [toReference] : []), ...(beside ? [toMiddle] : [])],
  };
}

/** Draws a tape as shapes. With `outlineText` its reading stands on a card across it; without, only the tape is drawn. */
export function tapeShapes(tape: Tape, unit: LengthUnit, leaderHex: string, outlineText: OutlineText | null): Shape[] {
  const along = unitVector(tape.from, tape.to);
  const length = distance(tape.from, tape.to);
  const ends =
    length > 4 * END_MM ? [bar(tape.from, along, 0, END_MM, 2), bar(tape.from, along, length - END_MM, length, 2)] : [];
  return [
    ...tape.leaders.map(
      ([a, b]): Shape => ({
        kind: 'path',
        layer: 'tape',
        d: pathData([move(a), line(b)]),
        stroke: { hex: leaderHex, widthMm: 1.2, dashMm: [4, 4] },
      }),
    ),
    {
      kind: 'path',
      layer: 'tape',
      d: pathData(bar(tape.from, along, 0, length, 0)),
      fill: TAPE_HEX,
      stroke: { hex: TAPE_INK_HEX, widthMm: 0.8 },
    },
    {
      kind: 'path',
      layer: 'tape',
      d: pathData(ticks(tape, unit, along)),
      stroke: { hex: TAPE_INK_HEX, widthMm: 0.9 },
    },
    ...ends.map(
      (end): Shape => ({
        kind: 'path',
        layer: 'tape',
        d: pathData(end),
        fill: TAPE_END_HEX,
        stroke: { hex: TAPE_INK_HEX, widthMm: 0.6 },
      }),
    ),
    ...(outlineText ? labelShapes(tape, formatLength(tape.um, unit), outlineText) : []),
  ];
}

/** A rectangle across the tape from one distance along it to another, `over` mm wider than the tape on either side. */
function bar(from: Point, along: Point, start: number, end: number, over: number): Path {
  const half = TAPE_WIDTH_MM / 2 + over;
  const corner = (distanceAlong: number, side: 1 | -1) => ({
    x: from.x + along.x * distanceAlong - along.y * half * side,
    y: from.y + along.y * distanceAlong + along.x * half * side,
  });
  return [move(corner(start, -1)), line(corner(end, -1)), line(corner(end, 1)), line(corner(start, 1)), close];
}

/** Ticks from the tape's zero: a long one each inch or centimetre, short ones at quarters or halves. */
function ticks(tape: Tape, unit: LengthUnit, along: Point): Path {
  const across = { x: -along.y, y: along.x };
  const parts = unit === 'in' ? 4 : 2;
  const stepMm = (unit === 'in' ? UM_PER_INCH : UM_PER_CM) / UM_PER_MM / parts;
  const lengthMm = distance(tape.from, tape.to);
  const edge = -TAPE_WIDTH_MM / 2;
  const count = Math.floor(lengthMm / stepMm + 1e-6);
  return Array.from({ length: Math.max(0, count) }, (_, index) => index + 1).flatMap((tick) => {
    const reach = tick % parts === 0 ? TAPE_WIDTH_MM * 0.55 : TAPE_WIDTH_MM * 0.28;
    const start = {
      x: tape.from.x + along.x * stepMm * tick + across.x * edge,
      y: tape.from.y + along.y * stepMm * tick + across.y * edge,
    };
    return [move(start), line({ x: start.x + across.x * reach, y: start.y + across.y * reach })];
  });
}

function labelShapes(tape: Tape, text: string, outlineText: OutlineText): Shape[] {
  const { widthMm } = outlineText(text, LABEL_CAP_MM, { x: 0, y: 0 });
  const width = widthMm + 2 * LABEL_PAD_MM.x;
  const height = LABEL_HEIGHT_MM;
  const middle = labelMiddle(tape, width, height);
  const [x, y] = [middle.x - width / 2, middle.y - height / 2];
  const card = pathData([
    move({ x, y }),
    line({ x: x + width, y }),
    line({ x: x + width, y: y + height }),
    line({ x, y: y + height }),
    close,
  ]);
  const baseline = { x: middle.x - widthMm / 2, y: middle.y + LABEL_CAP_MM / 2 };
  return [
    { kind: 'path', layer: 'tape', d: card, fill: CARD_HEX, stroke: { hex: TAPE_INK_HEX, widthMm: 1.4 } },
    { kind: 'glyphs', layer: 'tape', text, d: outlineText(text, LABEL_CAP_MM, baseline).d, fill: TAPE_INK_HEX },
  ];
}

/** So much of a tape must show beside a label that lies on it, mm. */
const SHOWING_MM = { upright: 18, level: 28 } as const;

/** The middle of the tape; beside or under a tape too short to carry its label and still show. */
function labelMiddle(tape: Tape, width: number, height: number): Point {
  const middle = { x: (tape.from.x + tape.to.x) / 2, y: (tape.from.y + tape.to.y) / 2 };
  const upright = Math.abs(tape.to.x - tape.from.x) < 1e-6;
  const room = distance(tape.from, tape.to) - (upright ? height : width);
  if (room >= SHOWING_MM[upright ? 'upright' : 'level']) return middle;
  const aside = TAPE_WIDTH_MM / 2 + LABEL_ASIDE_MM;
  if (!upright) return { x: middle.x, y: middle.y + (tape.labelAbove ? -1 : 1) * (aside + height / 2) };
  return { x: middle.x + (middle.x >= 0 ? 1 : -1) * (aside + width / 2), y: middle.y };
}

function unitVector(from: Point, to: Point): Point {
  const length = distance(from, to);
  return length === 0 ? { x: 0, y: 1 } : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}
