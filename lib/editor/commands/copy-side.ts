import { widthMeasureOf } from '@/lib/domain/garment/kinds';
import type { Garment, LayoutDocument, Print, SizeGroup } from '@/lib/domain/layout/document';
import { startingValues } from '@/lib/domain/layout/locations';
import { printsOn } from '@/lib/domain/layout/scene';
import { garmentOf, groupFor, keyOf, type OfferedSize, offeredSizes } from '@/lib/domain/layout/sizes';
import type { Command, TableState } from '../command';
import { withTwin } from '../twin-print';
import type { MakesPrints } from './duplicate-print';

/**
 * Lays the side that is up out on another garment too: each print of it that suits that garment, as a print of its own
 * with the same readings, each size taking those of its namesake. Prints that are on both already stay as they are.
 */
export const copySide: Command<MakesPrints & { readonly garmentId: string }> = {
  id: 'copySide',
  keys: [],
  needs: 'garment',
  canRun: (state) => !state.locked && otherGarments(state).length > 0,
  otherwise: 'suitsNoOther',
  run: (state, { garmentId, newId }) => {
    const { layout, selection } = state;
    const target = otherGarments(state).find((garment) => garment.garmentId === garmentId);
    if (!(target && selection)) return layout;
    const source = garmentOf(layout, selection.garmentId);
    return copyable(layout, selection, target).reduce((made, print) => {
      const place = {
        garmentIds: [target.garmentId],
        side: print.side,
        locationId: print.locationId,
        turnCentideg: print.turnCentideg,
        sizeGroups: groupsOn(print, source, target, newId),
      };
      return withTwin(made, print, place, newId());
    }, layout);
  },
};

/** The other garments of the job that the side that is up can be copied to: some print of it suits them and is not on them. */
export function otherGarments({ layout, selection }: Pick<TableState, 'layout' | 'selection'>): Garment[] {
  if (!selection) return [];
  return layout.garments.filter(
    (garment) => garment.garmentId !== selection.garmentId && copyable(layout, selection, garment).length > 0,
  );
}

function copyable(
  layout: LayoutDocument,
  side: Parameters<typeof printsOn>[1],
  { garmentId, blanks }: Garment,
): Print[] {
  return printsOn(layout, side).filter(
    (print) =>
      !print.garmentIds.includes(garmentId) &&
      blanks.every((blank) => startingValues(print.locationId, blank) !== null),
  );
}

/** The print's readings on another garment's sizes, one group for each group that some size takes its readings from. */
function groupsOn(print: Print, source: Garment, target: Garment, newId: () => string): SizeGroup[] {
  const from = offeredSizes(source);
  const groups = new Map<SizeGroup, SizeGroup>();
  for (const offered of offeredSizes(target)) {
    const like = groupFor(print, keyOf(namesake(offered, from)));
    const group = groups.get(like) ?? { ...like, groupId: newId(), members: [] };
    groups.set(like, { ...group, members: [...group.members, keyOf(offered)] });
  }
  return [...groups.values()];
}

/** The size of the same band and label; where there is none, the one nearest in width, of the same band if it has any. */
function namesake({ blank, size }: OfferedSize, from: readonly OfferedSize[]): OfferedSize {
  const band = from.filter((each) => each.blank.ageBand === blank.ageBand);
  const choices = band.length > 0 ? band : from;
  const same = choices.find((each) => each.size.label === size.label);
  const width = widthOf({ blank, size });
  const nearest = [...choices].sort((a, b) => Math.abs(widthOf(a) - width) - Math.abs(widthOf(b) - width))[0];
  const found = same ?? nearest;
  if (!found) throw new Error(`no size like ${size.label} to copy readings from`);
  return found;
}

function widthOf({ blank, size }: Pick<OfferedSize, 'blank' | 'size'>): number {
  return size.measuresUm[widthMeasureOf(blank.kind)] ?? 0;
}
