import { z } from 'zod';
import { SIDES, type Side } from '../garment/flat';
import { AGE_BANDS, type GarmentKind, WIDTH_MEASURES, widthMeasureOf } from '../garment/kinds';
import { clothSchema, type Garment, type GarmentSize, type LayoutDocument } from '../layout/document';
import { INK_EDGES, LOCATION_IDS, MEASURED_FROM } from '../layout/locations';
import { photographOf } from '../layout/photograph-scene';
import { pictureFrame } from '../layout/picture-frame';
import { ACROSS_TOWARDS, printReading } from '../layout/readings';
import { printsOn } from '../layout/scene';
import { garmentOf, groupFor, sizeOf, totalCount } from '../layout/sizes';
import type { TypeCase } from '../layout/type-case';
import type { FrozenScene } from './frozen-scenes';
import { viewFit, viewFitSchema } from './view-fit';

const um = z.number().int();

/** What the tape says of one print on one size; see `PrintReading`. */
export const printReadingSchema = z.object({
  widthUm: um,
  heightUm: um,
  /** How tall the letters are; there for lettering, and only there. */
  capHeightUm: um.optional(),
  dropUm: um,
  measuredFrom: z.enum(MEASURED_FROM),
  edge: z.enum(INK_EDGES),
  across: z.object({ towards: z.enum(ACROSS_TOWARDS), um }),
});

const viewSideSchema = z.object({
  side: z.enum(SIDES),
  sceneSha256: z.string(),
  /** The drawing can be shown on the shop's photograph too. */
  photographed: z.literal(true).optional(),
  prints: z.array(
    z.object({
      printId: z.string(),
      groupId: z.string(),
      name: z.string(),
      locationId: z.enum(LOCATION_IDS),
      reading: printReadingSchema,
      /** Left out of what was sent before it was kept. */
      fit: viewFitSchema.optional(),
      /** Why it is meant to cross a seam or to leave the garment, in the maker's words. */
      fitNote: z.string().optional(),
      /** Its picture comes out soft, and it is made all the same: the customer ticks that by itself. */
      goAheadSoft: z.literal(true).optional(),
    }),
  ),
});

/** A garment of a revision, ready to be shown: sizes ordered, their pictures and what the tape reads on each. */
export const viewGarmentSchema = z.object({
  garmentId: z.string(),
  name: z.string(),
  fabric: z.string(),
  cloth: clothSchema,
  total: um,
  /** Every picture of the garment has this size in px: they are at one scale. */
  widthPx: um,
  heightPx: um,
  sizes: z.array(
    z.object({
      blankId: z.string(),
      sizeId: z.string(),
      ageBand: z.enum(AGE_BANDS),
      label: z.string(),
      /** The name of its style where the garment has another for the same age band. */
      styleName: z.string().optional(),
      quantity: um,
      /** How wide the garment lies flat: across the chest, or what `widthMeasure` says. */
      chestUm: um,
      widthMeasure: z.enum(WIDTH_MEASURES).optional(),
      sides: z.array(viewSideSchema),
    }),
  ),
});
export type ViewGarment = z.infer<typeof viewGarmentSchema>;
export type ViewSide = z.infer<typeof viewSideSchema>;

/**
 * What a sealed layout shows, worked out once when it is sent so that a page needs one read. Lettering needs the type it was
 * set in: how it fits is said of the longest of the list.
 */
export function viewGarments(
  layout: LayoutDocument,
  scenes: readonly FrozenScene[],
  type?: TypeCase | null,
): ViewGarment[] {
  return layout.garments.map((garment) =>
    viewGarment(
      layout,
      garment,
      scenes.filter(({ key }) => key.garmentId === garment.garmentId),
      type ?? null,
    ),
  );
}

/** The names of prints that come out soft and are made all the same, each once. */
export function softPrintNames(garments: readonly Pick<ViewGarment, 'sizes'>[]): string[] {
  const shown = garments.flatMap(({ sizes }) => sizes.flatMap(({ sides }) => sides.flatMap(({ prints }) => prints)));
  return [...new Set(shown.filter(({ goAheadSoft }) => goAheadSoft === true).map(({ name }) => name))];
}

/** The sides of a garment that hang on its line: those with a print on some size; where there is none, the first. */
export function sidesOnLine({ sizes }: Pick<ViewGarment, 'sizes'>): Side[] {
  const shown = sizes.flatMap(({ sides }) => sides);
  const printed = shown.filter(({ prints }) => prints.length > 0);
  return [...new Set((printed.length > 0 ? printed : shown.slice(0, 1)).map(({ side }) => side))];
}

function viewGarment(
  layout: LayoutDocument,
  garment: Garment,
  scenes: readonly FrozenScene[],
  type: TypeCase | null,
): ViewGarment {
  const { widthPx, heightPx } = pictureFrame(scenes.map(({ scene }) => scene));
  const sizes = new Map<string, ViewGarment['sizes'][number]>();
  for (const { key, sha256 } of scenes) {
    const { blank, size, quantity, styleName } = sizeOf(garment, key.size);
    const id = `${blank.blankId}/${size.sizeId}`;
    const shown = sizes.get(id) ?? {
      ...key.size,
      ageBand: blank.ageBand,
      label: size.label,
      ...(styleName === undefined ? {} : { styleName }),
      quantity,
      ...shownWidth(blank.kind, size),
      sides: [],
    };
    const photographed = photographOf(garment, key.size, key.side) ? { photographed: true as const } : {};
    shown.sides.push({ side: key.side, sceneSha256: sha256, ...photographed, prints: viewPrints(layout, key, type) });
    sizes.set(id, shown);
  }
  return {
    garmentId: garment.garmentId,
    name: garment.name,
    fabric: garment.blanks[0]?.fabric ?? '',
    cloth: garment.cloth,
    total: totalCount([garmentOf(layout, garment.garmentId)]),
    widthPx,
    heightPx,
    sizes: [...sizes.values()],
  };
}

/** A chest width goes without saying what it is. */
function shownWidth(
  kind: GarmentKind,
  { sizeId, measuresUm }: GarmentSize,
): Pick<ViewGarment['sizes'][number], 'chestUm' | 'widthMeasure'> {
  const widthMeasure = widthMeasureOf(kind);
  const chestUm = measuresUm[widthMeasure];
  if (chestUm === undefined) throw new Error(`size ${sizeId} has no ${widthMeasure}`);
  return widthMeasure === 'chestWidth' ? { chestUm } : { chestUm, widthMeasure };
}

function viewPrints(layout: LayoutDocument, key: FrozenScene['key'], type: TypeCase | null): ViewSide['prints'] {
  const offered = sizeOf(garmentOf(layout, key.garmentId), key.size);
  return printsOn(layout, key).map((print) => {
    const group = groupFor(print, key.size);
    const { fitNote, goAheadSoft } = print;
    const fit = viewFit(print, offered, type?.longest);
    return {
      printId: print.printId,
      groupId: group.groupId,
      name: print.name,
      locationId: print.locationId,
      reading: printReading(print, group),
      fit,
      // The note says why it lies over a line; where it lies clear there is nothing to say.
      ...(fitNote && fit.stops.length > 0 ? { fitNote } : {}),
      ...(goAheadSoft ? { goAheadSoft } : {}),
    };
  });
}
