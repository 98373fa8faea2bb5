import type { GarmentOnOffer, ListItem } from './list';
import { MOST_ITEMS } from './list';
import { MOST_OF_ONE_ITEM } from './person';
import { readSize } from './read-size';

/** What a cell of sizes says: `Youth M`, `2 × M, L`. What could not be read stands as it was written. */
export function itemsText(items: readonly ListItem[], garment: GarmentOnOffer): string {
  return items
    .filter(({ garmentId }) => garmentId === garment.garmentId)
    .map(({ size, typed, quantity }) => {
      const offered = garment.sizes.find(
        ({ blankId, sizeId }) => size !== null && blankId === size.blankId && sizeId === size.sizeId,
      );
      const words = offered?.words ?? (typed || size?.sizeId || '');
      return quantity === 1 ? words : `${quantity} × ${words}`;
    })
    .join(', ');
}

/**
 * The garments a cell of sizes asks for: `M`, `2 × youth M`, `M x2`, `M, L`. A part no size can be read from is kept as it
 * was written. Ids are those of `before` as far as it goes, then of `newId`.
 */
export function readItems(
  text: string,
  garment: GarmentOnOffer,
  before: readonly ListItem[],
  newId: () => string,
): ListItem[] {
  const known = before.filter(({ garmentId }) => garmentId === garment.garmentId);
  const itemId = (index: number) => known[index]?.itemId ?? newId();
  const { garmentId } = garment;
  return partsOf(text, garment)
    .slice(0, MOST_ITEMS)
    .map(({ words, quantity }, index) => {
      const read = readSize(words, garment.sizes);
      const size = read.ok ? { blankId: read.size.blankId, sizeId: read.size.sizeId } : null;
      return { itemId: itemId(index), garmentId, size, typed: read.ok ? '' : words, quantity };
    });
}

type Part = { readonly words: string; readonly quantity: number };

function partsOf(text: string, garment: GarmentOnOffer): Part[] {
  const whole = text.trim();
  if (whole === '') return [];
  if (readSize(whole, garment.sizes).ok) return [{ words: whole, quantity: 1 }];
  return whole
    .split(/\s*[,;+\n]\s*|\s+(?:and|&)\s+/u)
    .filter((part) => part !== '')
    .map((part) => counted(part, garment));
}

/** `2xl` is a size: an `x` counts only where a space parts it from the size. */
function counted(part: string, garment: GarmentOnOffer): Part {
  if (readSize(part, garment.sizes).ok) return { words: part, quantity: 1 };
  const before = /^(\d{1,5})(?:\s*[×*]\s*|\s+x\s+|\s+)(\S.*)$/u.exec(part);
  const after = /^(\S.*?)\s*(?:[×*]|(?:\s|\b)x)\s*(\d{1,5})$/u.exec(part);
  const words = before?.[2] ?? after?.[1];
  const quantity = Number(before?.[1] ?? after?.[2] ?? 0);
  if (words === undefined || quantity < 1 || quantity > MOST_OF_ONE_ITEM) return { words: part, quantity: 1 };
  return { words, quantity };
}
