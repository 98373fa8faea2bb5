import type { Side } from '../garment/flat';
import { sidesOf } from '../garment/kinds';
import type { Garment, GarmentBlank, LayoutDocument, SizeKey } from './document';
import { withGarment } from './garment-members';
import { type Photograph, type PhotographSetting, type PictureSize, photographSchema, setToScale } from './photograph';
import { flatOf, type Scene, type SceneKey, type Shape } from './scene';

/** A photograph under a scene, in place of the drawn cloth. It is never part of a sealed scene. */
export type PhotographShape = {
  readonly kind: 'photograph';
  readonly layer: 'cloth';
} & Pick<Photograph, 'sha256' | 'widthPx' | 'heightPx' | 'matrix'>;

/** What a surface can be asked to draw. */
export type DrawnShape = Shape | PhotographShape;

/** The same scene over a photograph: cloth drawn anew by none, prints and tapes where they were to the micrometre. */
export function sceneOnPhotograph<Drawn extends Pick<Scene, 'shapes'>>(
  scene: Drawn,
  { sha256, widthPx, heightPx, matrix }: PhotographShape | Photograph,
): Omit<Drawn, 'shapes'> & { readonly shapes: readonly DrawnShape[] } {
  const under: PhotographShape = { kind: 'photograph', layer: 'cloth', sha256, widthPx, heightPx, matrix };
  return { ...scene, shapes: [under, ...scene.shapes.filter(({ layer }) => layer !== 'cloth')] };
}

/** A photograph of the shop's list: what it shows, and the two points it is set to scale by. */
export type ShopPhotograph = Omit<Photograph, 'matrix'> & {
  readonly shopBlankId: string;
  readonly setting: PhotographSetting;
};

/**
 * The photograph that belongs under one drawing of a garment; null where there is none in its colour. One that was taken
 * up with another colour stays in the layout unseen, so that changing the colour back brings it back.
 */
export function photographUnder(
  { garments }: Pick<LayoutDocument, 'garments'>,
  { garmentId, size, side }: Pick<SceneKey, 'garmentId' | 'size' | 'side'>,
): Photograph | null {
  const garment = garments.find((each) => each.garmentId === garmentId);
  return garment ? photographOf(garment, size, side) : null;
}

/** The same for a garment that is at hand. */
export function photographOf({ cloth, blanks }: Garment, { blankId, sizeId }: SizeKey, side: Side): Photograph | null {
  const blank = blanks.find((each) => each.blankId === blankId);
  const found = blank?.photographs?.find(
    (each) => each.sizeId === sizeId && each.side === side && each.colourName === cloth.name,
  );
  return found ?? null;
}

/** Whether a garment has a photograph to be shown on. */
export function hasPhotographs({ cloth, blanks }: Pick<Garment, 'cloth' | 'blanks'>): boolean {
  return blanks.some((blank) => blank.photographs?.some(({ colourName }) => colourName === cloth.name));
}

/**
 * The garment with the shop's photographs of its blanks in its colour, each set to scale by the measures this garment is
 * drawn from; those it had are replaced. One that cannot be set to scale on these measures is left out.
 */
export function withPhotographs(garment: Garment, photographs: readonly ShopPhotograph[]): Garment {
  return { ...garment, blanks: garment.blanks.map((blank) => blankWith(blank, garment.cloth.name, photographs)) };
}

function blankWith(blank: GarmentBlank, colour: string, photographs: readonly ShopPhotograph[]): GarmentBlank {
  const { photographs: _before, ...bare } = blank;
  const of = photographs.filter(
    ({ shopBlankId, colourName }) => shopBlankId === blank.shopBlankId && colourName === colour,
  );
  const set = of.flatMap((each) => setOn(blank, each));
  return set.length > 0 ? { ...bare, photographs: set } : bare;
}

/**
 * The layout after a blank of a garment took its chart anew: the photographs it has are set to scale by the new measures,
 * and those the shop no longer has go. One that is shown as drawn stays so.
 */
export function withPhotographsReset(
  layout: LayoutDocument,
  { garmentId, blankId }: { readonly garmentId: string; readonly blankId: string },
  photographs: readonly ShopPhotograph[],
): LayoutDocument {
  return withGarment(layout, garmentId, (garment) => ({
    ...garment,
    blanks: garment.blanks.map((blank) =>
      blank.blankId === blankId && blank.photographs ? blankWith(blank, garment.cloth.name, photographs) : blank,
    ),
  }));
}

/** The garment shown as drawn, on no photograph. */
export function withoutPhotographs(garment: Garment): Garment {
  return withPhotographs(garment, []);
}

function setOn(
  blank: GarmentBlank,
  { shopBlankId: _of, setting, ...photograph }: ShopPhotograph & PictureSize,
): Photograph[] {
  const size = blank.sizes.find(({ sizeId }) => sizeId === photograph.sizeId);
  if (!size || !sidesOf(blank.kind).includes(photograph.side)) return [];
  const set = setToScale(setting, photograph, flatOf(blank.kind, size, photograph.side));
  // Read back as a layout reads it, so that one taken up again is the same text.
  return set.ok ? [photographSchema.parse({ ...photograph, matrix: [...set.matrix] })] : [];
}
