import type { Garment, SizeKey } from '@/lib/domain/layout/document';
import { type SizeName, sameSize, styleNameOf } from '@/lib/domain/layout/sizes';

/** Sizes of one blank that follow each other, from the first to the last. */
export type SizeSpan = Pick<SizeName, 'ageBand' | 'styleName'> & { readonly first: string; readonly last: string };

/** The sizes of a garment that a group covers, as few spans as can say it: S to 5XL, Youth XS to XL. In the order offered. */
export function sizeSpans(garment: Pick<Garment, 'blanks'>, members: readonly SizeKey[]): SizeSpan[] {
  return garment.blanks.flatMap((blank) => {
    const { blankId, ageBand, sizes } = blank;
    const styleName = styleNameOf(garment, blank);
    const about = styleName === undefined ? { ageBand } : { ageBand, styleName };
    const spans: SizeSpan[] = [];
    let isOpen = false;
    for (const { sizeId, label } of sizes) {
      const isMember = members.some((member) => sameSize(member, { blankId, sizeId }));
      const open = spans.at(-1);
      if (isMember && isOpen && open) spans[spans.length - 1] = { ...open, last: label };
      else if (isMember) spans.push({ ...about, first: label, last: label });
      isOpen = isMember;
    }
    return spans;
  });
}

/** The label of a span: `S–5XL`, or `M` for one size alone. */
export function spanLabel({ first, last }: Pick<SizeSpan, 'first' | 'last'>): string {
  return first === last ? first : `${first}–${last}`;
}
