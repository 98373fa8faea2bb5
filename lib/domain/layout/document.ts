import { z } from 'zod';
import { artRefSchema } from '../art/art-ref';
import { frozenFlatSchema, SIDES } from '../garment/flat';
import { AGE_BANDS, GARMENT_KINDS } from '../garment/kinds';
import { MEASURE_NAMES } from '../garment/measures';
import { letteringSchema } from '../lettering/lettering';
import { FULL_TURN_CENTIDEG } from '../measure/angle';
import { LONGEST_LENGTH_UM } from '../measure/length';
import { MOST_OF_ONE_ITEM, peopleSchema } from '../people/person';
import { LOCATION_IDS } from './locations';
import { photographSchema } from './photograph';

/** As much as the maker can write about why a print is meant to lie as it does. */
export const LONGEST_FIT_NOTE = 400;

/** As many size groups as a print can have. */
export const MOST_SIZE_GROUPS = 40;

/** As many photographs as a blank of a layout can have: each side of each size. */
const MOST_PHOTOGRAPHS = 240;

const id = z.string().min(1).max(64);
const lengthUm = z.number().int().min(-LONGEST_LENGTH_UM).max(LONGEST_LENGTH_UM);
const sizeUm = z.number().int().min(1_000).max(LONGEST_LENGTH_UM);

/** A cloth colour as the customer would name it, and as the screen shows it. */
export const clothSchema = z.object({
  name: z.string().min(1).max(60),
  hex: z.string().regex(/^#[0-9A-Fa-f]{6}$/),
  heather: z.boolean(),
  /** Sleeves and collar, where a kind has them of a second cloth; the same cloth when left out. */
  secondName: z.string().min(1).max(60).optional(),
  secondHex: z
    .string()
    .regex(/^#[0-9A-Fa-f]{6}$/)
    .optional(),
});

/** One size of a blank with every measure its kind is drawn from; `flats` is filled in when a revision is sealed. */
export const blankSizeSchema = z.object({
  sizeId: id,
  label: z.string().min(1).max(30),
  measuresUm: z.partialRecord(z.enum(MEASURE_NAMES), sizeUm),
  estimated: z.array(z.enum(MEASURE_NAMES)),
  flats: z.array(frozenFlatSchema).optional(),
});

/** An undecorated garment style in the sizes offered. */
export const blankSchema = z.object({
  blankId: id,
  /** The blank of the shop's list its chart was taken from; left out where that was a starter chart. */
  shopBlankId: id.optional(),
  name: z.string().min(1).max(80),
  kind: z.enum(GARMENT_KINDS),
  ageBand: z.enum(AGE_BANDS),
  fabric: z.string().max(80),
  cutToleranceUm: z.object({ acrossUm: lengthUm, longUm: lengthUm }),
  sizes: z.array(blankSizeSchema).min(1).max(60),
  /** The shop's own photographs of it in the colours they were taken up for; left out where there are none. */
  photographs: z.array(photographSchema).max(MOST_PHOTOGRAPHS).optional(),
});

/** How many of one size are ordered. */
export const countSchema = z.object({
  blankId: id,
  sizeId: id,
  quantity: z.number().int().min(0).max(MOST_OF_ONE_ITEM),
});

/** One garment of the order: a style in one cloth, over one or several blanks (adult and youth). */
export const garmentSchema = z.object({
  garmentId: id,
  name: z.string().min(1).max(80),
  cloth: clothSchema,
  blanks: z.array(blankSchema).min(1).max(6),
  counts: z.array(countSchema),
});

/** A size of a blank, as size groups and counts name it. */
export const sizeKeySchema = z.object({ blankId: id, sizeId: id });

/**
 * One width, drop and across for a band of sizes. Width is that of the unturned ink; of lettering it is the most the
 * letters may take across, and `capHeightUm` how tall they are. Drop runs from the location's point to its edge of the
 * turned ink's box (of lettering: of the box of its capitals); across runs from the centre line to the middle of that box,
 * positive towards the wearer's left.
 */
export const sizeGroupSchema = z.object({
  groupId: id,
  members: z.array(sizeKeySchema),
  widthUm: sizeUm,
  dropUm: lengthUm,
  acrossUm: lengthUm,
  /** Letter height; there for lettering, and only there. */
  capHeightUm: sizeUm.optional(),
});

/** What a print shows: a picture, or type set for each person of the list. */
export const contentSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('art'), art: artRefSchema }),
  z.object({ kind: z.literal('lettering'), lettering: letteringSchema }),
]);

/** One decoration on one side of one or more garments. */
export const printSchema = z.object({
  printId: id,
  name: z.string().min(1).max(80),
  garmentIds: z.array(id).min(1),
  side: z.enum(SIDES),
  locationId: z.enum(LOCATION_IDS),
  content: contentSchema,
  turnCentideg: z.number().int().min(-FULL_TURN_CENTIDEG).max(FULL_TURN_CENTIDEG),
  sizeGroups: z.array(sizeGroupSchema).min(1).max(MOST_SIZE_GROUPS),
  /** Why the print is meant to cross a seam or to leave the garment, in the maker's words; sealed with a revision. */
  fitNote: z.string().min(1).max(LONGEST_FIT_NOTE).optional(),
  /** The maker goes ahead with it though its picture prints soft; the customer is asked to tick that. */
  goAheadSoft: z.literal(true).optional(),
  /** The print it keeps under, and how far its ink's top is from that one's foot: a number under its name. */
  below: z.object({ printId: id, gapUm: lengthUm.min(0) }).optional(),
});

/** What is charged, where the shop shows it. Amounts in minor units of an ISO 4217 currency. */
export const priceSchema = z.object({
  currency: z.string().regex(/^[A-Z]{3}$/),
  lines: z.array(
    z.object({ lineId: id, text: z.string().max(200), quantity: z.number().int(), eachMinor: z.number().int() }),
  ),
});

/** Everything the customer agrees to: the working copy of a job and every revision are this, format 1. */
export const layoutDocumentSchema = z.object({
  format: z.literal(1),
  garments: z.array(garmentSchema).max(20),
  prints: z.array(printSchema).max(100),
  people: peopleSchema,
  alternatives: z.array(z.never()),
  price: priceSchema.nullable(),
  notes: z.string().max(4_000),
  statement: z.string().max(4_000),
});

export type LayoutDocument = z.infer<typeof layoutDocumentSchema>;
export type Garment = z.infer<typeof garmentSchema>;
export type GarmentBlank = z.infer<typeof blankSchema>;
export type GarmentSize = z.infer<typeof blankSizeSchema>;
export type Cloth = z.infer<typeof clothSchema>;
export type SizeCount = z.infer<typeof countSchema>;
export type SizeKey = z.infer<typeof sizeKeySchema>;
export type SizeGroup = z.infer<typeof sizeGroupSchema>;
export type Print = z.infer<typeof printSchema>;
export type PrintContent = z.infer<typeof contentSchema>;

/** A document with nothing in it yet. */
export function emptyLayout(statement: string): LayoutDocument {
  return {
    format: 1,
    garments: [],
    prints: [],
    people: { columns: [], lines: [] },
    alternatives: [],
    price: null,
    notes: '',
    statement,
  };
}
