import { z } from 'zod';
import { FLAT_LINES, type FlatLineName, type FrozenFlat } from '../garment/flat';
import { clearanceBetween, type Polyline } from '../geometry/clearance';
import type { Print } from '../layout/document';
import { fitOnSize } from '../layout/fit';
import { chainsOf } from '../layout/flat-chains';
import { isStopping } from '../layout/layout-fit';
import { LOCATIONS, type MeasuredFrom } from '../layout/locations';
import { flatOf, placedPrint } from '../layout/scene';
import { keyOf, type OfferedSize } from '../layout/sizes';
import type { SetType } from '../layout/type-case';
import { umFromMm } from '../measure/length';

const line = z.enum(FLAT_LINES);

/** How a print lies on one size of a revision, as it was when it was sent. */
export const viewFitSchema = z.object({
  /** How near the ink comes to the nearest line a press cannot cross; 0 where it crosses it, null on a flat without any. */
  nearest: z.object({ line, um: z.number().int() }).nullable(),
  /** What a press cannot do as it lies: the maker wrote why it is meant so. */
  stops: z.array(z.object({ kind: z.enum(['offGarment', 'crossesSeam', 'widerThanArmholes']), line: line.nullable() })),
});
export type ViewFit = z.infer<typeof viewFitSchema>;

/** Lines where a tape starts from, or that lie with it: the drop says already how far the ink is from them. */
const TOLD_BY_THE_DROP: Readonly<Partial<Record<MeasuredFrom, readonly FlatLineName[]>>> = {
  collarSeamCentre: ['collarSeam', 'collarEdge', 'hoodSeam', 'hoodEdge', 'eyelet'],
  sleeveHemFold: ['sleeveHem', 'cuffSeam'],
  topEdgeCentre: ['topEdge'],
  bibTopCentre: ['bibEdge'],
  brimSeamCentre: ['brimSeam', 'brimEdge'],
  outseamTop: ['topEdge', 'waistSeam'],
};

/** How a print lies on one size. Lines its drop is measured from count only where the ink crosses them. */
export function viewFit(print: Print, offered: OfferedSize, setType?: SetType): ViewFit {
  const flat = flatOf(offered.blank.kind, offered.size, print.side);
  const placed = placedPrint(print, keyOf(offered), flat, setType);
  const stops = new Map(
    fitOnSize(placed, flat, { locationId: print.locationId, cutToleranceUm: offered.blank.cutToleranceUm })
      .filter(isStopping)
      .map(({ kind, line }) => [`${kind} ${line}`, { kind, line }]),
  );
  return viewFitSchema.parse({ nearest: nearestLine(placed.inkOutline, flat, print), stops: [...stops.values()] });
}

function nearestLine(ink: Polyline, flat: FrozenFlat, { locationId }: Pick<Print, 'locationId'>): ViewFit['nearest'] {
  const [first] = ink;
  const told = TOLD_BY_THE_DROP[LOCATIONS[locationId].measuredFrom] ?? [];
  const ring = first ? [...ink, first] : [];
  return chainsOf(flat)
    .lines.map(({ line, chain }) => ({ line, um: umFromMm(clearanceBetween(ring, chain).distance) }))
    .filter(({ line, um }) => um === 0 || !told.includes(line))
    .reduce<ViewFit['nearest']>((near, each) => (near && near.um <= each.um ? near : each), null);
}
