import type { Garment, GarmentBlank, GarmentSize, LayoutDocument, Print, SizeGroup, SizeKey } from './document';

/** One size of one blank of a garment, with how many are ordered. `styleName`: see `styleNameOf`. */
export type OfferedSize = {
  readonly blank: GarmentBlank;
  readonly size: GarmentSize;
  readonly quantity: number;
  readonly styleName?: string;
};

/** Every size a garment is offered in, blank by blank as listed (smallest bands come first where the maker put them). */
export function offeredSizes(garment: Garment): OfferedSize[] {
  return garment.blanks.flatMap((blank) => {
    const styleName = styleNameOf(garment, blank);
    return blank.sizes.map((size) => ({
      blank,
      size,
      quantity: countOf(garment, { blankId: blank.blankId, sizeId: size.sizeId }),
      ...(styleName === undefined ? {} : { styleName }),
    }));
  });
}

/** The name of a blank's style where another blank of the garment is for the same age band: an `M` could be either's. */
export function styleNameOf(
  { blanks }: Pick<Garment, 'blanks'>,
  { name, ageBand }: Pick<GarmentBlank, 'name' | 'ageBand'>,
): string | undefined {
  return blanks.filter((blank) => blank.ageBand === ageBand).length > 1 ? name : undefined;
}

/** The sizes that are ordered; while no count is entered yet, all that are offered. */
export function sizesToShow(garment: Garment): OfferedSize[] {
  const offered = offeredSizes(garment);
  const ordered = offered.filter(({ quantity }) => quantity > 0);
  return ordered.length > 0 ? ordered : offered;
}

/** The middle of sizes in order, the smaller of two: the one to draw where only one is. Undefined where there are none. */
export function middleOf<Size>(sizes: readonly Size[]): Size | undefined {
  return sizes[Math.floor((sizes.length - 1) / 2)];
}

/** How many of a size are ordered. */
export function countOf(garment: Garment, key: SizeKey): number {
  return garment.counts.find((count) => sameSize(count, key))?.quantity ?? 0;
}

/** How many garments are ordered in all. */
export function totalCount(garments: readonly Garment[]): number {
  return garments.reduce((sum, garment) => sum + garment.counts.reduce((each, { quantity }) => each + quantity, 0), 0);
}

/** True when both name the same size of the same blank. */
export function sameSize(a: SizeKey, b: SizeKey): boolean {
  return a.blankId === b.blankId && a.sizeId === b.sizeId;
}

/** The key of a shown size. */
export function keyOf({ blank, size }: Pick<OfferedSize, 'blank' | 'size'>): SizeKey {
  return { blankId: blank.blankId, sizeId: size.sizeId };
}

/** The garment with this id. Throws: ids inside one document always resolve. */
export function garmentOf(layout: Pick<LayoutDocument, 'garments'>, garmentId: string): Garment {
  const garment = layout.garments.find((each) => each.garmentId === garmentId);
  if (!garment) throw new Error(`no garment ${garmentId} in this layout`);
  return garment;
}

/** The blank and size a key names. Throws where the garment does not offer it. */
export function sizeOf(garment: Garment, key: SizeKey): OfferedSize {
  const found = offeredSizes(garment).find((each) => sameSize(keyOf(each), key));
  if (!found) throw new Error(`${garment.name} has no size ${key.blankId}/${key.sizeId}`);
  return found;
}

/** The size group of a print that a size belongs to. Throws when none does: every size of a printed garment is in one. */
export function groupFor(print: Pick<Print, 'printId' | 'sizeGroups'>, key: SizeKey): SizeGroup {
  const group = print.sizeGroups.find(({ members }) => members.some((member) => sameSize(member, key)));
  if (!group) throw new Error(`print ${print.printId} has no size group for ${key.blankId}/${key.sizeId}`);
  return group;
}

/** What a size is called by. Codes, not words. */
export type SizeName = {
  readonly ageBand: GarmentBlank['ageBand'];
  readonly label: string;
  readonly styleName?: string | undefined;
};

/** A size as it is said: youth and toddler sizes carry their band, and sizes of two styles of one band their style's name. */
export function sizeName({ blank, size, styleName }: Pick<OfferedSize, 'blank' | 'size' | 'styleName'>): SizeName {
  return { ageBand: blank.ageBand, label: size.label, styleName };
}
