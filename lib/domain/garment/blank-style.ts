import { z } from 'zod';
import { LONGEST_LENGTH_UM } from '../measure/length';
import { AGE_BANDS, GARMENT_KINDS, type GarmentKind } from './kinds';
import { MEASURE_NAMES } from './measures';

const hex = z.string().regex(/^#[0-9A-Fa-f]{6}$/);

/** Most sizes one style can have. */
export const MOST_SIZES = 60;
/** Most colours one style can have. */
export const MOST_COLOURS = 60;
/** The dearest a single blank may be, minor units of the shop's currency: what is more is a slip of the finger. */
export const DEAREST_MINOR = 1_000_000_000;

/** Measures as a chart gives them, any may be missing; micrometres. */
export const enteredMeasuresSchema = z.partialRecord(
  z.enum(MEASURE_NAMES),
  z.number().int().min(1).max(LONGEST_LENGTH_UM),
);

/** One size of a style: the label people order by, what its chart gives, and what one costs, where that is known. */
export const styleSizeSchema = z.object({
  sizeId: z.string().min(1).max(64),
  label: z.string().trim().min(1).max(30),
  entered: enteredMeasuresSchema,
  costMinor: z.number().int().min(0).max(DEAREST_MINOR).nullable(),
});

/** A colour a style can be bought in. The second cloth is that of a raglan's sleeves; the same cloth where left out. */
export const styleColourSchema = z.object({
  colourId: z.string().min(1).max(64),
  name: z.string().trim().min(1).max(60),
  hex,
  heather: z.boolean(),
  secondName: z.string().trim().min(1).max(60).optional(),
  secondHex: hex.optional(),
});

/** Where a style's chart comes from: common practice, to be replaced, or the shop's own. */
export const CHART_SOURCES = ['starter', 'own'] as const;

/** A blank as the shop keeps it in its list: an undecorated style for one age band, with its chart and colours. */
export const blankStyleSchema = z.object({
  name: z.string().trim().min(1).max(80),
  kind: z.enum(GARMENT_KINDS),
  ageBand: z.enum(AGE_BANDS),
  fabric: z.string().trim().max(80),
  supplierNote: z.string().trim().max(1_000),
  chartSource: z.enum(CHART_SOURCES),
  cutToleranceUm: z.object({
    acrossUm: z.number().int().min(0).max(LONGEST_LENGTH_UM),
    longUm: z.number().int().min(0).max(LONGEST_LENGTH_UM),
  }),
  /** Smallest first. */
  sizes: z.array(styleSizeSchema).max(MOST_SIZES),
  colours: z.array(styleColourSchema).max(MOST_COLOURS),
});

export type StyleSize = z.infer<typeof styleSizeSchema>;
export type StyleColour = z.infer<typeof styleColourSchema>;
export type BlankStyle = z.infer<typeof blankStyleSchema>;

/** Kinds whose flats have parts of a second cloth. */
const SECOND_CLOTH_KINDS = ['raglan'] as const satisfies readonly GarmentKind[];

/** Whether a garment of this kind can have parts of a second cloth, such as the sleeves of a raglan. */
export function hasSecondCloth(kind: GarmentKind): kind is (typeof SECOND_CLOTH_KINDS)[number] {
  return SECOND_CLOTH_KINDS.some((each) => each === kind);
}
