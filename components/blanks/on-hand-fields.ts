/** How many of one size and colour can lie on a shelf; above it somebody mistyped (common practice, no source). */
export const MOST_ON_HAND = 99_999;

/** One count of the form: what was typed, and what was on hand when it was shown. */
export type CountField = { readonly sizeId: string; readonly colourId: string };

/** The field that holds the count of one size and colour. */
export function countField({ sizeId, colourId }: CountField): string {
  return `count ${sizeId} ${colourId}`;
}

/** The field that says what was on hand when the count was begun. */
export function seenCountField({ sizeId, colourId }: CountField): string {
  return `seen ${sizeId} ${colourId}`;
}

/** The count a field's name stands for, or null for any other field. */
export function countOfField(name: string): CountField | null {
  const [prefix, sizeId, colourId] = name.split(' ');
  return prefix === 'count' && sizeId && colourId ? { sizeId, colourId } : null;
}
