import type { Garment, SizeKey } from '@/lib/domain/layout/document';
import { sizeSpans, spanLabel } from '@/lib/editor/size-spans';
import { type ReadingsTranslator, sizeWords } from '@/lib/messages/reading-words';

/** The sizes of a garment that a group covers, as they are said: `S–5XL`, `Youth XS–XL`. Empty where it covers none. */
export function groupWords(t: ReadingsTranslator, garment: Garment, members: readonly SizeKey[]): string {
  return sizeSpans(garment, members)
    .map((span) => sizeWords(t, { ...span, label: spanLabel(span) }))
    .join(', ');
}
