import type { LayoutDocument } from '@/lib/domain/layout/document';
import { type OverlapOnSize, overlapOnSize } from '@/lib/domain/layout/print-overlap';
import { printsOn } from '@/lib/domain/layout/scene';
import type { TypeCase } from '@/lib/domain/layout/type-case';
import type { Selection } from './selection';
import type { ShownFlat } from './shown-flat';

/** Two prints of the side that is up lie over each other on the size shown: `name` is the upper of the two. */
export type PaperOverlap = OverlapOnSize & {
  readonly printId: string;
  readonly name: string;
  readonly otherName: string;
};

/** Every two prints of the side that is up that lie over each other on the size shown, each pair once. */
export function paperOverlaps(
  layout: Pick<LayoutDocument, 'prints'>,
  selection: Selection,
  { offered }: Pick<ShownFlat, 'offered'>,
  type?: TypeCase | null,
): PaperOverlap[] {
  const here = printsOn(layout, selection);
  return here.flatMap((print, index) =>
    here.slice(0, index).flatMap((other) => {
      const overlap = overlapOnSize(print, other, offered, type?.longest);
      return overlap ? [{ ...overlap, printId: print.printId, name: print.name, otherName: other.name }] : [];
    }),
  );
}
