import { z } from 'zod';
import { clothLook } from '../garment/cloth-look';
import { type FrozenFlat, freezeFlat, SIDES, type Side } from '../garment/flat';
import { drawFlat, type GarmentKind, sidesOf } from '../garment/kinds';
import type { Box } from '../geometry/box';
import { mappedPath, pathData } from '../geometry/path';
import type { Garment, GarmentSize, LayoutDocument, Print, SizeKey } from './document';
import { type PlacedPrint, placeAt, placeLettering } from './placement';
import { garmentOf, groupFor, sizeOf } from './sizes';
import type { SetType } from './type-case';

const hex = z.string().regex(/^#[0-9A-Fa-f]{6}$/);
const strokeSchema = z.object({ hex, widthMm: z.number(), dashMm: z.array(z.number()).optional() });

/** What a shape belongs to: the garment itself, a print, or a tape laid on it to show a reading. */
export const LAYERS = ['cloth', 'print', 'tape'] as const;

const pathShapeSchema = z.object({
  kind: z.literal('path'),
  layer: z.enum(LAYERS),
  d: z.string(),
  fill: hex.optional(),
  stroke: strokeSchema.optional(),
});
const imageShapeSchema = z.object({
  kind: z.literal('image'),
  layer: z.literal('print'),
  printId: z.string(),
  sha256: z.string(),
  widthPx: z.number(),
  heightPx: z.number(),
  /** Maps a pixel position of the upright picture to millimetres. */
  matrix: z.tuple([z.number(), z.number(), z.number(), z.number(), z.number(), z.number()]),
});
/** Text already turned to outlines; `text` says what they spell, for people who hear the picture. */
const glyphsShapeSchema = z.object({
  kind: z.literal('glyphs'),
  layer: z.enum(LAYERS),
  text: z.string(),
  d: z.string(),
  fill: hex,
  /** The print it is; left out for words that are no print. */
  printId: z.string().optional(),
  /** A round line outside every letter, reaching `widthMm` beyond it: painted under the fill, twice as wide. */
  outline: z.object({ hex, widthMm: z.number() }).optional(),
});

export const shapeSchema = z.discriminatedUnion('kind', [pathShapeSchema, imageShapeSchema, glyphsShapeSchema]);
export type Shape = z.infer<typeof shapeSchema>;
export type PathShape = z.infer<typeof pathShapeSchema>;
export type ImageShape = z.infer<typeof imageShapeSchema>;
export type GlyphsShape = z.infer<typeof glyphsShapeSchema>;
/** What a print is drawn as: a picture, or set type. */
export type PrintShape = ImageShape | (GlyphsShape & { readonly printId: string });

/**
 * One side of one garment in one size as a flat list of shapes, painted in order, in the millimetres of the flat. Every
 * surface (table, page, picture, print file) draws a scene and computes nothing about garments itself.
 */
export const sceneSchema = z.object({
  format: z.literal(1),
  garmentId: z.string(),
  blankId: z.string(),
  sizeId: z.string(),
  side: z.enum(SIDES),
  lineId: z.string().nullable(),
  /** Random text in a scene that shows somebody's name, so that its hash tells nothing about the name; null otherwise. */
  salt: z.string().nullable(),
  box: z.object({ x: z.number(), y: z.number(), width: z.number(), height: z.number() }),
  shapes: z.array(shapeSchema),
});
export type Scene = z.infer<typeof sceneSchema>;

/** Which drawing of a layout is meant. `lineId` names a person once lettering differs by person; null otherwise. */
export type SceneKey = {
  readonly garmentId: string;
  readonly size: SizeKey;
  readonly side: Side;
  readonly lineId: string | null;
};

/**
 * The scene of one side of one size: cloth first, then its prints in order, lettering as `setType` sets it. Throws for a size
 * or side that is not offered, and for lettering without type to set it in.
 */
export function composeScene(
  layout: Pick<LayoutDocument, 'garments' | 'prints'>,
  key: SceneKey,
  setType?: SetType,
): Scene {
  const garment = garmentOf(layout, key.garmentId);
  const { blank, size } = sizeOf(garment, key.size);
  const flat = flatOf(blank.kind, size, key.side);
  return {
    format: 1,
    garmentId: garment.garmentId,
    blankId: blank.blankId,
    sizeId: size.sizeId,
    side: key.side,
    lineId: key.lineId,
    salt: null,
    box: flat.box,
    shapes: [...clothShapes(flat, garment), ...composePrints(layout, key, setType)],
  };
}

/** Of a scene, the prints alone: for surfaces on which the cloth lies already. */
export function composePrints(
  layout: Pick<LayoutDocument, 'garments' | 'prints'>,
  key: SceneKey,
  setType?: SetType,
): PrintShape[] {
  const { blank, size } = sizeOf(garmentOf(layout, key.garmentId), key.size);
  const flat = flatOf(blank.kind, size, key.side);
  return printsOn(layout, key).flatMap((print) => printShapes(print, key.size, flat, setType));
}

/** The prints on one side of a garment, in the order they are painted. */
export function printsOn(
  layout: Pick<LayoutDocument, 'prints'>,
  { garmentId, side }: Pick<SceneKey, 'garmentId' | 'side'>,
): Print[] {
  return layout.prints.filter((print) => print.side === side && print.garmentIds.includes(garmentId));
}

/** Sides that are shown whether they are decorated or not; a bare sleeve says nothing. */
const ALWAYS_SHOWN: readonly Side[] = ['front', 'back'];

/** The sides of a garment that its pictures show: front and back, and each sleeve with a print on it. */
export function shownSides(layout: Pick<LayoutDocument, 'prints'>, garmentId: string, kind: GarmentKind): Side[] {
  return sidesOf(kind).filter(
    (side) => ALWAYS_SHOWN.includes(side) || printsOn(layout, { garmentId, side }).length > 0,
  );
}

/** The flat of a size: the frozen one where the layout was sealed, otherwise drawn from its measures. */
export function flatOf(kind: GarmentKind, size: GarmentSize, side: Side): FrozenFlat {
  const frozen = size.flats?.find((flat) => flat.side === side);
  return frozen ?? drawnFlat(kind, size, side);
}

/** A print set down on one size. Lettering needs `setType`: it throws without. */
export function placedPrint(print: Print, size: SizeKey, flat: FrozenFlat, setType?: SetType): PlacedPrint {
  return placeAt(print, groupFor(print, size), flat, setType);
}

const drawn = new WeakMap<GarmentSize, Map<Side, FrozenFlat>>();

/** Drawing a flat is pure, and documents are never changed in place: each size object is drawn once a side. */
function drawnFlat(kind: GarmentKind, size: GarmentSize, side: Side): FrozenFlat {
  const known = drawn.get(size) ?? new Map<Side, FrozenFlat>();
  drawn.set(size, known);
  const already = known.get(side);
  if (already) return already;
  const flat = freezeFlat(drawFlat(kind, { um: size.measuresUm }, side));
  known.set(side, flat);
  return flat;
}

function clothShapes(flat: FrozenFlat, { cloth }: Pick<Garment, 'cloth'>): Shape[] {
  const look = clothLook(cloth, flat);
  return [
    ...flat.parts.map((part): Shape => ({ kind: 'path', layer: 'cloth', d: part.d, fill: look.fillOf(part) })),
    ...look.fibres.map(({ d, stroke }): Shape => ({ kind: 'path', layer: 'cloth', d, stroke })),
    ...flat.lines.map((line): Shape => ({ kind: 'path', layer: 'cloth', d: line.d, stroke: look.strokeOf(line) })),
    { kind: 'path', layer: 'cloth', d: flat.outline, stroke: look.outline },
  ];
}

/** A print as it is painted; nothing where no word is to be set. */
function printShapes(print: Print, size: SizeKey, flat: FrozenFlat, setType?: SetType): PrintShape[] {
  const { content, printId } = print;
  if (content.kind === 'lettering') return letteringShapes(print, size, flat, setType);
  const { art } = content;
  const { matrix } = placedPrint(print, size, flat);
  return [
    {
      kind: 'image',
      layer: 'print',
      printId,
      sha256: art.sha256,
      widthPx: art.widthPx,
      heightPx: art.heightPx,
      matrix: [...matrix] as ImageShape['matrix'],
    },
  ];
}

function letteringShapes(print: Print, size: SizeKey, flat: FrozenFlat, setType?: SetType): PrintShape[] {
  const { content, printId, turnCentideg, locationId } = print;
  if (content.kind !== 'lettering') return [];
  if (!setType) throw new Error(`lettering ${printId} cannot be drawn without type to set it in`);
  const { lettering } = content;
  const group = groupFor(print, size);
  const set = setType(lettering, group);
  if (set.path.length === 0) return [];
  const { matrix } = placeLettering(set, turnCentideg, group, locationId, flat);
  const { outline } = lettering;
  return [
    {
      kind: 'glyphs',
      layer: 'print',
      printId,
      text: set.words.filter((line) => line !== '').join('\n'),
      d: pathData(mappedPath(set.path, matrix)),
      fill: lettering.hex,
      ...(outline && { outline: { hex: outline.hex, widthMm: set.outlineMm } }),
    },
  ];
}

/** The box every size and side of a garment fits in, so that all of them can be shown at one scale. Millimetres. */
export function commonBox(scenes: readonly Pick<Scene, 'box'>[], marginMm: number): Box {
  const halfWidth = Math.max(...scenes.map(({ box }) => Math.max(-box.x, box.x + box.width))) + marginMm;
  const top = Math.min(...scenes.map(({ box }) => box.y)) - marginMm;
  const bottom = Math.max(...scenes.map(({ box }) => box.y + box.height)) + marginMm;
  return { x: -halfWidth, y: top, width: 2 * halfWidth, height: bottom - top };
}
