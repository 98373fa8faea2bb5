import type { ArtFacts } from '../art/art-facts';
import { realPxPerInch, sharpnessHeadline } from '../art/findings/real-detail';
import type { LayoutDocument, Print } from '../layout/document';
import { garmentOf, sameSize, sizesToShow } from '../layout/sizes';
import type { Micrometres } from '../measure/length';

/** What is known of a picture's real detail, by the SHA-256 of its file; null where it was not checked. */
export type DetailOf = (sha256: string) => Pick<ArtFacts, 'detailShare'> | null;

/** A print whose picture has too little detail for the width it has on some ordered size. */
export type SoftPrint = {
  readonly print: Print;
  /** The widest it is printed on any ordered size. */
  readonly widthUm: Micrometres;
  /** Pixels of real detail to a printed inch, there. */
  readonly pxPerInch: number;
  /** The widest that would be fair. */
  readonly fairUm: Micrometres;
};

/** The prints that come out soft: under 200 pixels of real detail to a printed inch. */
export function softPrints(layout: Pick<LayoutDocument, 'garments' | 'prints'>, detailOf: DetailOf): SoftPrint[] {
  return layout.prints.flatMap((print): SoftPrint[] => {
    if (print.content.kind !== 'art') return [];
    const { art } = print.content;
    const detail = { inkWidthPx: art.inkBox.width, facts: detailOf(art.sha256) };
    const { fairUm } = sharpnessHeadline(detail);
    const widthUm = widestUm(layout, print);
    return widthUm <= fairUm ? [] : [{ print, widthUm, pxPerInch: realPxPerInch(detail, widthUm), fairUm }];
  });
}

/** The soft prints that stop a revision: neither made smaller nor gone ahead with. */
export function softPrintsToDecide(
  layout: Pick<LayoutDocument, 'garments' | 'prints'>,
  detailOf: DetailOf,
): SoftPrint[] {
  return softPrints(layout, detailOf).filter(({ print }) => print.goAheadSoft !== true);
}

/** The layout with the mark on prints that are soft only: it is said of how a print comes out now. */
export function withoutIdleSoftMarks(layout: LayoutDocument, detailOf: DetailOf): LayoutDocument {
  const soft = new Set(softPrints(layout, detailOf).map(({ print }) => print.printId));
  return {
    ...layout,
    prints: layout.prints.map((print) => {
      const { goAheadSoft, ...plain } = print;
      return goAheadSoft === undefined || soft.has(print.printId) ? print : plain;
    }),
  };
}

/** Whether a sealed layout asks its signers to tick that something comes out soft. */
export function asksForSoftTick({ prints }: { readonly prints: readonly Pick<Print, 'goAheadSoft'>[] }): boolean {
  return prints.some(({ goAheadSoft }) => goAheadSoft === true);
}

function widestUm(layout: Pick<LayoutDocument, 'garments'>, print: Print): Micrometres {
  const shown = print.garmentIds.flatMap((garmentId) => sizesToShow(garmentOf(layout, garmentId)));
  const widths = print.sizeGroups
    .filter(({ members }) =>
      members.some((member) =>
        shown.some(({ blank, size }) => sameSize(member, { blankId: blank.blankId, sizeId: size.sizeId })),
      ),
    )
    .map(({ widthUm }) => widthUm);
  return Math.max(0, ...widths);
}
