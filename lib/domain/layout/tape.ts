import type { FrozenFlat } from '../garment/flat';
import { close, line, move, pathData } from '../geometry/path';
import { distance, type Point } from '../geometry/point';
import { formatLength } from '../measure/format-length';
import { type LengthUnit, type Micrometres, UM_PER_CM, UM_PER_INCH, UM_PER_MM } from '../measure/length';
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
};

/** Text as outlines: path data in mm with the origin at the left end of the baseline, y down, and its set width. */
export type OutlinedText = { readonly d: string; readonly widthMm: number };
/** Turns words into outlines at a cap height; placed so that the baseline's left end is at `at`. */
export type OutlineText = (text: string, capHeightMm: number, at: Point) => OutlinedText;

/** Width of a drawn tape, mm: wide enough to read its label on a phone. */
export const TAPE_WIDTH_MM = 20;
const LABEL_CAP_MM = 17;
const LABEL_PAD_MM = 8;
const GAP_MM = 14;
const TAPE_HEX = '#F5C73A';
const TAPE_INK_HEX = '#1B1A15';
const CARD_HEX = '#FFFFFF';

/** The tapes that show a print's readings on one size: drop, width, and across where it is off the centre line. */
export function tapesFor(print: Print, size: SizeKey, flat: FrozenFlat): Tape[] {
  const group = groupFor(print, size);
  const placed = placedPrint(print, size, flat);
  const { inkBox, measuredFrom } = placed;
  const edgeY = measuredFrom.y + group.dropUm / UM_PER_MM;
  const bottom = inkBox.y + inkBox.height;
  const middleX = inkBox.x + inkBox.width / 2;
  const beside = LOCATIONS[print.locationId].edge === 'middle';
  const outerX = middleX >= 0 ? inkBox.x + inkBox.width + GAP_MM : inkBox.x - GAP_MM;
  const dropX = beside ? outerX : middleX;
  const referenceX = beside ? Math.sign(middleX || 1) * measuredFrom.x : measuredFrom.x;
  const reference = { x: referenceX, y: measuredFrom.y };
  const widthHalf = group.widthUm / UM_PER_MM / 2;
  const widthY = bottom + GAP_MM + TAPE_WIDTH_MM / 2;
  return [
    {
      printId: print.printId,
      reading: 'drop',
      um: group.dropUm,
      from: { x: dropX, y: measuredFrom.y },
      to: { x: dropX, y: edgeY },
      leaders: [
        ...(Math.abs(dropX - referenceX) > 1 ? [[reference, { x: dropX, y: measuredFrom.y }] as const] : []),
        ...(beside
          ? [
              [
                { x: middleX, y: edgeY },
                { x: dropX, y: edgeY },
              ] as const,
            ]
          : []),
      ],
    },
    {
      printId: print.printId,
      reading: 'width',
      um: group.widthUm,
      from: { x: middleX - widthHalf, y: widthY },
      to: { x: middleX + widthHalf, y: widthY },
      leaders: [],
    },
    ...(group.acrossUm === 0
      ? []
      : [
          {
            printId: print.printId,
            reading: 'across' as const,
            um: Math.abs(group.acrossUm),
            from: { x: 0, y: widthY + TAPE_WIDTH_MM * 2.6 },
            to: { x: middleX, y: widthY + TAPE_WIDTH_MM * 2.6 },
            leaders: [
              [
                { x: 0, y: measuredFrom.y },
                { x: 0, y: widthY + TAPE_WIDTH_MM * 2.6 },
              ] as const,
              [
                { x: middleX, y: bottom },
                { x: middleX, y: widthY + TAPE_WIDTH_MM * 2.6 },
              ] as const,
            ],
          },
        ]),
  ];
}

/** Draws a tape as shapes. With `outlineText` its reading stands on a card across it; without, only the tape is drawn. */
export function tapeShapes(tape: Tape, unit: LengthUnit, leaderHex: string, outlineText: OutlineText | null): Shape[] {
  const along = unitVector(tape.from, tape.to);
  const across = { x: -along.y, y: along.x };
  const half = TAPE_WIDTH_MM / 2;
  const corner = (end: Point, side: 1 | -1) => ({
    x: end.x + across.x * half * side,
    y: end.y + across.y * half * side,
  });
  const body = pathData([
    move(corner(tape.from, -1)),
    line(corner(tape.to, -1)),
    line(corner(tape.to, 1)),
    line(corner(tape.from, 1)),
    close,
  ]);
  return [
    ...tape.leaders.map(
      ([a, b]): Shape => ({
        kind: 'path',
        layer: 'tape',
        d: pathData([move(a), line(b)]),
        stroke: { hex: leaderHex, widthMm: 1.2, dashMm: [4, 4] },
      }),
    ),
    { kind: 'path', layer: 'tape', d: body, fill: TAPE_HEX, stroke: { hex: TAPE_INK_HEX, widthMm: 0.8 } },
    {
      kind: 'path',
      layer: 'tape',
      d: pathData(ticks(tape, unit, along, across)),
      stroke: { hex: TAPE_INK_HEX, widthMm: 0.9 },
    },
    ...(outlineText ? labelShapes(tape, formatLength(tape.um, unit), outlineText) : []),
  ];
}

/** Ticks from the tape's zero: a long one each inch or centimetre, short ones at quarters or halves. */
function ticks(tape: Tape, unit: LengthUnit, along: Point, across: Point) {
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
  const width = widthMm + 2 * LABEL_PAD_MM;
  const height = LABEL_CAP_MM + 2 * LABEL_PAD_MM * 0.8;
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

/** The middle of the tape; beside or under a tape too short to carry its label and still show. */
function labelMiddle(tape: Tape, width: number, height: number): Point {
  const middle = { x: (tape.from.x + tape.to.x) / 2, y: (tape.from.y + tape.to.y) / 2 };
  const upright = Math.abs(tape.to.x - tape.from.x) < 1e-6;
  const room = distance(tape.from, tape.to) - (upright ? height : width);
  if (room >= TAPE_WIDTH_MM) return middle;
  const aside = TAPE_WIDTH_MM / 2 + 3;
  if (!upright) return { x: middle.x, y: middle.y + aside + height / 2 };
  return { x: middle.x + (middle.x >= 0 ? 1 : -1) * (aside + width / 2), y: middle.y };
}

function unitVector(from: Point, to: Point): Point {
  const length = distance(from, to);
  return length === 0 ? { x: 0, y: 1 } : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}
