import { sameSize } from '@/lib/domain/layout/sizes';
import { startingGroups, startingInk } from '@/lib/domain/layout/starting-groups';
import type { Micrometres } from '@/lib/domain/measure/length';
import { printInHand } from './chosen-print';
import type { TableState } from './command';

/**
 * Where the location of the print in hand usually has it on the size shown, its drop that of the print it keeps under; null
 * when it knows no usual place for that size.
 */
export function usualPlace(state: TableState): { dropUm: Micrometres; acrossUm: Micrometres } | null {
  const { print, group } = printInHand(state);
  const garments = state.layout.garments.filter(({ garmentId }) => print.garmentIds.includes(garmentId));
  const groups = startingGroups(print.locationId, garments, startingInk(print.content), () => 'unused');
  const size = state.selection?.size;
  const usual = groups?.find(({ members }) => members.some((member) => size && sameSize(member, size)));
  if (!usual) return null;
  return { dropUm: print.below ? group.dropUm : usual.dropUm, acrossUm: usual.acrossUm };
}
