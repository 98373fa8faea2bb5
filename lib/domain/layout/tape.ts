import type { FrozenFlat } from '../garment/flat';
import type { Box } from '../geometry/box';
import { close, line, move, type Path, pathData } from '../geometry/path';
import { distance, type Point } from '../geometry/point';
import type { SetLettering } from '../lettering/set-lettering';
import { type LengthUnit, type Micrometres, mmFromUm, UM_PER_CM, UM_PER_INCH, UM_PER_MM } from '../measure/length';
import type { Print, SizeKey } from './document';
import { LOCATIONS } from './locations';
import type { PlacedPrint } from './placement';
import { placedPrint, type Shape } from './scene';
import { groupFor } from './sizes';
import type { SetType } from './type-case';

/** A tape laid between two points to show a reading. */
export type Tape = {
  readonly printId: string;
  readonly reading: 'drop' | 'across' | 'width' | 'letters';
  readonly um: Micrometres;
  readonly from: Point;
  readonly to: Point;
  /** Fine dashed lines from the tape's ends to what it measures, where it lies beside it. */
  readonly leaders: readonly (readonly [Point, Point])[];
  /** How large it is drawn, as a share of a tape on a large tee. */
  readonly scale: number;
  /** True where its reading stands above a level tape instead of under it: beside a print that is measured up. */
  readonly labelAbove?: boolean;
};

/** Text as outlines: path data in mm with the origin at the left end of the baseline, y down, and its set width. */
export type OutlinedText = { readonly d: string; readonly widthMm: number };
/** Turns words into outlines at a cap height; placed so that the baseline's left end is at `at`. */
export type OutlineText = (text: string, capHeightMm: number, at: Point) => OutlinedText;

/**
 * Sizes of a drawn tape, mm on a large tee with its sleeves (`FULL_SIZE_MM` wide): a reading's capitals are 2.5 % of that,
 * 8 px where it is shown 350 px wide on a phone. What is smaller, and shown larger, has smaller tapes: see `tapeScale`.
 */
export const TAPE_WIDTH_MM = 22;
export const LABEL_CAP_MM = 23;
export const LABEL_PAD_MM = { x: 9, y: 8 };
const LABEL_HEIGHT_MM = LABEL_CAP_MM + 2 * LABEL_PAD_MM.y;
const FULL_SIZE_MM = 920;
/** A tall narrow thing is shown by its height: so much of it counts as width. */
const HEIGHT_COUNTS = 0.5;
const SCALES = { least: 0.2, most: 1.25 };
/** A tape shorter than this carries its reading beside it: `3 3/8 in` needs so much. */
const LABEL_ON_TAPE_FROM_MM = 150;
export const LABEL_ASIDE_MM = 4;
const GAP_MM = 12;
const END_MM = 2.6;
const TAPE_HEX = '#F5C73A';
export const TAPE_INK_HEX = '#1B1A15';
const TAPE_END_HEX = '#8C929C';

/** How large tapes are drawn in a picture of this much garment, so that its readings stay as easy to read. */
export function tapeScale({ width, height }: Pick<Box, 'width' | 'height'>): number {
  return Math.min(SCALES.most, Math.max(SCALES.least, Math.max(width, height * HEIGHT_COUNTS) / FULL_SIZE_MM));
}

/**
 * The tapes that show a print's readings on one size: drop, width (of lettering how tall the letters are), and across where
 * it is off the centre line. `scale` is that of the picture they are for; without it the side is taken to be shown alone.
 */
export function tapesFor(
  print: Print,
  size: SizeKey,
  flat: FrozenFlat,
  { scale = tapeScale(flat.box), setType }: { readonly scale?: number; readonly setType?: SetType | undefined } = {},
): Tape[] {
  const group = groupFor(print, size);
  const placed = placedPrint(print, size, flat, setType);
  const { inkBox, measuredFrom } = placed;
  const { printId, content } = print;
  const middleX = inkBox.x + inkBox.width / 2;
  // Where the drop is measured up to the print's foot, its tape lies under the print and the others above.
  const labelAbove = LOCATIONS[print.locationId].direction === 'up';
  const away = labelAbove ? -1 : 1;
  const edgeY = labelAbove ? inkBox.y : inkBox.y + inkBox.height;
  const widthMm = mmFromUm(group.widthUm);
  const [gap, tapeWidth] = [GAP_MM * scale, TAPE_WIDTH_MM * scale];
  const widthY = edgeY + away * (gap + tapeWidth / 2);
  const set = content.kind === 'lettering' ? setType?.(content.lettering, group) : undefined;
  const width: Tape = set
    ? lettersTape(print, set, placed, scale)
    : {
        printId,
        reading: 'width',
        um: group.widthUm,
        from: { x: middleX - widthMm / 2, y: widthY },
        to: { x: middleX + widthMm / 2, y: widthY },
        leaders: [],
        scale,
        ...(labelAbove && { labelAbove }),
      };
  // Over a print that it keeps under a tape would hide that one's letters.
  const clearOfMm = set && print.below ? Math.max(inkBox.width, widthMm) / 2 : undefined;
  const drop = dropTape(print, group.dropUm, { inkBox, measuredFrom, clearOfMm }, scale);
  if (group.acrossUm === 0) return [drop, width];
  const labelUnderWidth = widthMm < LABEL_ON_TAPE_FROM_MM * scale ? (LABEL_ASIDE_MM + LABEL_HEIGHT_MM) * scale : 0;
  const underWidthY = set ? edgeY : widthY + away * (tapeWidth / 2 + labelUnderWidth);
  const acrossY = underWidthY + away * (gap + Math.max(tapeWidth, LABEL_HEIGHT_MM * scale) / 2);
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
    scale,
    ...(labelAbove && { labelAbove }),
  };
  return [drop, width, across];
}

/** Where a drop's tape lies. `clearOfMm`: so far from the print's middle, away from the tape of its letters. */
type DropPlace = Pick<PlacedPrint, 'inkBox' | 'measuredFrom'> & { readonly clearOfMm: number | undefined };

/** The drop's tape: over the middle of the print, or beside it where the drop is taken to the print's middle. */
function dropTape(print: Print, dropUm: Micrometres, place: DropPlace, scale: number): Tape {
  const { inkBox, measuredFrom, clearOfMm } = place;
  if (clearOfMm !== undefined) return clearDropTape(print, dropUm, { ...place, clearOfMm }, scale);
  const beside = LOCATIONS[print.locationId].edge === 'middle';
  const middleX = inkBox.x + inkBox.width / 2;
  const outwards = middleX >= 0 ? 1 : -1;
  const dropX = beside ? middleX + outwards * (inkBox.width / 2 + (GAP_MM + TAPE_WIDTH_MM / 2) * scale) : middleX;
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
    scale,
  };
}

function clearDropTape(
  { printId, locationId }: Print,
  dropUm: Micrometres,
  { inkBox, measuredFrom, clearOfMm }: DropPlace & { readonly clearOfMm: number },
  scale: number,
): Tape {
  const x = inkBox.x + inkBox.width / 2 - clearOfMm - (GAP_MM + TAPE_WIDTH_MM / 2) * scale;
  const from = { x, y: measuredFrom.y };
  const to = { x, y: measuredFrom.y + mmFromUm(dropUm) };
  const um = LOCATIONS[locationId].direction === 'up' ? -dropUm : dropUm;
  const leaders = [
    [measuredFrom, from],
    [{ x: inkBox.x, y: to.y }, to],
  ] as const;
  return { printId, reading: 'drop', um, from, to, leaders, scale };
}

/** How tall the letters of the first line are: upright beside them, on the side where no drop is measured. */
function lettersTape(
  { printId, locationId }: Pick<Print, 'printId' | 'locationId'>,
  { capHeightUm, outlineMm }: Pick<SetLettering, 'capHeightUm' | 'outlineMm'>,
  { inkBox, readBox }: Pick<PlacedPrint, 'inkBox' | 'readBox'>,
  scale: number,
): Tape {
  // What lies on the centre line but for rounding lies on it.
  const outwards = inkBox.x + inkBox.width / 2 >= -1e-6 ? 1 : -1;
  const side = LOCATIONS[locationId].edge === 'middle' ? -outwards : outwards;
  const edge = side > 0 ? inkBox.x + inkBox.width : inkBox.x;
  const x = edge + side * (GAP_MM + TAPE_WIDTH_MM / 2) * scale;
  const y = readBox.y + outlineMm;
  const to = { x, y: y + mmFromUm(capHeightUm) };
  return { printId, reading: 'letters', um: capHeightUm, from: { x, y }, to, leaders: [], scale };
}

/** Draws a tape as shapes, without its reading. */
export function tapeShapes(tape: Tape, unit: LengthUnit, leaderHex: string): Shape[] {
  const { from, to, scale } = tape;
  const along = unitVector(from, to);
  const length = distance(from, to);
  const end = END_MM * scale;
  const half = (TAPE_WIDTH_MM / 2) * scale;
  const ends = length > 4 * end ? [[0, end] as const, [length - end, length] as const] : [];
  const stroke = (hex: string, widthMm: number) => ({ hex, widthMm: hundredth(widthMm * scale) });
  return [
    ...tape.leaders.map(
      ([a, b]): Shape => ({
        kind: 'path',
        layer: 'tape',
        d: pathData([move(a), line(b)]),
        stroke: { ...stroke(leaderHex, 1.2), dashMm: [hundredth(4 * scale), hundredth(4 * scale)] },
      }),
    ),
    {
      kind: 'path',
      layer: 'tape',
      d: pathData(bar(from, along, 0, length, half)),
      fill: TAPE_HEX,
      stroke: stroke(TAPE_INK_HEX, 0.8),
    },
    { kind: 'path', layer: 'tape', d: pathData(ticks(tape, unit, along)), stroke: stroke(TAPE_INK_HEX, 0.9) },
    ...ends.map(
      ([start, stop]): Shape => ({
        kind: 'path',
        layer: 'tape',
        d: pathData(bar(from, along, start, stop, half + 2 * scale)),
        fill: TAPE_END_HEX,
        stroke: stroke(TAPE_INK_HEX, 0.6),
      }),
    ),
  ];
}

/** A rectangle along the tape from one distance to another, `half` mm to either side. */
function bar(from: Point, along: Point, start: number, end: number, half: number): Path {
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
  const width = TAPE_WIDTH_MM * tape.scale;
  const count = Math.floor(lengthMm / stepMm + 1e-6);
  return Array.from({ length: Math.max(0, count) }, (_, index) => index + 1).flatMap((tick) => {
    const reach = tick % parts === 0 ? width * 0.55 : width * 0.28;
    const start = {
      x: tape.from.x + along.x * stepMm * tick - (across.x * width) / 2,
      y: tape.from.y + along.y * stepMm * tick - (across.y * width) / 2,
    };
    return [move(start), line({ x: start.x + across.x * reach, y: start.y + across.y * reach })];
  });
}

function hundredth(mm: number): number {
  return Math.round(mm * 100) / 100;
}

function unitVector(from: Point, to: Point): Point {
  const length = distance(from, to);
  return length === 0 ? { x: 0, y: 1 } : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}
