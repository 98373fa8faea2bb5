import { realInkWidthPx } from '@/lib/domain/art/findings/real-detail';
import { type Sharpness, sharpnessAt } from '@/lib/domain/art/sharpness';
import type { Point } from '@/lib/domain/geometry/point';
import type { LayoutDocument, Print } from '@/lib/domain/layout/document';
import { type FitFinding, fitOnSize } from '@/lib/domain/layout/fit';
import { isStopping } from '@/lib/domain/layout/layout-fit';
import type { PlacedPrint } from '@/lib/domain/layout/placement';
import { placedPrint, printsOn } from '@/lib/domain/layout/scene';
import { groupFor } from '@/lib/domain/layout/sizes';
import type { TypeCase } from '@/lib/domain/layout/type-case';
import type { Micrometres } from '@/lib/domain/measure/length';
import type { DetailOf } from '@/lib/domain/revision/soft-prints';
import type { Selection } from './selection';
import type { ShownFlat } from './shown-flat';

/**
 * Something to say of a print on the size shown, at the place on the flat (mm) where it is the matter. `stops`: it cannot
 * be pressed as it lies.
 */
export type PaperFinding = {
  readonly printId: string;
  readonly name: string;
  readonly at: Point;
  readonly stops: boolean;
} & (
  | { readonly of: 'fit'; readonly finding: FitFinding }
  | {
      readonly of: 'art';
      readonly sharpness: Exclude<Sharpness, 'sharp'>;
      readonly widthUm: Micrometres;
      readonly inkWidthPx: number;
    }
);

/**
 * What there is to say of each print of the side that is up, on the size shown: how it fits there, and whether its picture
 * is sharp at its width. Of a print that cannot be pressed only the first reason is said, since the rest follows from it.
 * Lettering has to fit with the longest of the list. Of a picture whose detail is not known its pixels count as they are.
 */
export function paperFindings(
  layout: Pick<LayoutDocument, 'prints'>,
  selection: Selection,
  { flat, offered }: ShownFlat,
  type?: TypeCase | null,
  detailOf: DetailOf = () => null,
): PaperFinding[] {
  return printsOn(layout, selection).flatMap((print) => {
    const placed = placedPrint(print, selection.size, flat, type?.longest);
    const rules = { locationId: print.locationId, cutToleranceUm: offered.blank.cutToleranceUm };
    const all = fitOnSize(placed, flat, rules);
    const first = all.find(isStopping);
    const about = { printId: print.printId, name: print.name };
    return [
      ...(first ? [first] : all).map((finding): PaperFinding => {
        return { ...about, of: 'fit', at: finding.at, stops: isStopping(finding), finding };
      }),
      ...artFindings(print, placed, groupFor(print, selection.size).widthUm, detailOf),
    ];
  });
}

function artFindings(
  { printId, name, content, goAheadSoft }: Print,
  { inkOutline }: PlacedPrint,
  widthUm: Micrometres,
  detailOf: DetailOf,
): PaperFinding[] {
  if (content.kind !== 'art') return [];
  const { art } = content;
  const inkWidthPx = realInkWidthPx({ inkWidthPx: art.inkBox.width, facts: detailOf(art.sha256) });
  const sharpness = sharpnessAt(inkWidthPx, widthUm);
  if (sharpness === 'sharp') return [];
  const stops = sharpness === 'soft' && goAheadSoft !== true;
  // The lower left of the ink, however it is turned: findings of fit are seldom there.
  const at = inkOutline.reduce((best, each) => (each.y - each.x > best.y - best.x ? each : best));
  return [{ printId, name, of: 'art', at, stops, sharpness, widthUm, inkWidthPx }];
}
