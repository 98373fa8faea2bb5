import { z } from 'zod';

/** Raised when what is measured changes, so that what is kept of older pictures is measured again. */
export const ART_FACTS_FORMAT = 1;

/** As many places of one fault as are kept: enough to mark on a picture, the worst first. */
export const MOST_SPOTS = 40;

const px = z.number().int().nonnegative();
const share = z.number().min(0).max(1);
const hex = z.string().regex(/^#[0-9A-Fa-f]{6}$/);

/** A place on the upright picture, in its pixels. */
export const spotSchema = z.object({ x: px, y: px, width: px.min(1), height: px.min(1) });
export type Spot = z.infer<typeof spotSchema>;

const thinSpotSchema = spotSchema.extend({ thicknessPx: z.number().positive() });

/**
 * What of local thickness is known: the thinnest in px and where, thinnest first. Null where nothing is thinner than some
 * 64 px, or 128 of a picture of more than 7 million.
 */
const thicknessSchema = z.object({
  thinnestPx: z.number().positive().nullable(),
  spots: z.array(thinSpotSchema).max(MOST_SPOTS),
});

/**
 * What the pixels of a picture say whatever size it is printed at. Shares of ink are of the pixels that print; everything
 * in px is of the upright picture.
 */
export const artFactsSchema = z.object({
  format: z.literal(ART_FACTS_FORMAT),
  widthPx: px.min(1),
  heightPx: px.min(1),
  inkBox: spotSchema,
  /** Pixels that print. */
  inkPx: px,
  /** Flat colour or a photograph's countless ones. */
  look: z.enum(['drawn', 'photograph']),
  /** One colour joined to the picture's edges that was meant to be nothing; null where there is none. */
  backing: z
    .object({
      hex,
      /** Of the whole picture, joined to its edges. */
      share,
      /** Of the pixels round the picture's rim that have the colour. */
      rimShare: share,
      /** Places of the same colour that the edges do not reach: inside of letters, holes. */
      enclosed: z.array(spotSchema).max(MOST_SPOTS),
    })
    .nullable(),
  /** Plain bars or a rim along the picture's sides that do not belong to what is drawn: of a screenshot, of a card. */
  junk: z.array(spotSchema).max(MOST_SPOTS),
  /** Half-clear pixels further from solid ink than a smooth edge reaches. */
  haze: z.object({ share, reachPx: z.number().nonnegative(), spots: z.array(spotSchema).max(MOST_SPOTS) }),
  /** How much of the picture's detail is real along a side: 1 for a true original, 0.25 for one enlarged four times. */
  detailShare: z.number().min(0).max(1),
  strokes: thicknessSchema,
  /** Clear room between strokes. */
  gaps: thicknessSchema,
  specks: z.object({ count: px, spots: z.array(spotSchema).max(MOST_SPOTS) }),
  /** The colours of the ink, most of it first, near ones taken together. */
  colours: z.array(z.object({ hex, share })).max(24),
  /** The colour of the ink where nearly all of it has one; null otherwise. */
  oneColourHex: hex.nullable(),
});
export type ArtFacts = z.infer<typeof artFactsSchema>;
