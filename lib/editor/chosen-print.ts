import type { FrozenFlat } from '@/lib/domain/garment/flat';
import type { Garment, LayoutDocument, Print, SizeGroup } from '@/lib/domain/layout/document';
import { type GroupReadings, readAlike } from '@/lib/domain/layout/group-readings';
import { flatOf } from '@/lib/domain/layout/scene';
import { garmentOf, groupFor, sizeOf } from '@/lib/domain/layout/sizes';
import type { TableState } from './command';

/** The print in hand with what it lies on: its garment, the flat of the size shown, and the size group edits act on. */
export type ChosenPrint = {
  readonly print: Print;
  readonly garment: Garment;
  readonly group: SizeGroup;
  readonly flat: FrozenFlat;
};

/** The print in hand, or null when there is none. */
export function chosenPrint({ layout, selection }: Pick<TableState, 'layout' | 'selection'>): ChosenPrint | null {
  if (!selection) return null;
  const print = layout.prints.find(({ printId }) => printId === selection.printId);
  if (!print?.garmentIds.includes(selection.garmentId)) return null;
  const garment = garmentOf(layout, selection.garmentId);
  const { blank, size } = sizeOf(garment, selection.size);
  return { print, garment, group: groupFor(print, selection.size), flat: flatOf(blank.kind, size, print.side) };
}

/** Whether the print in hand can be changed: there is one, and the layout is not signed off. */
export function canEditPrint(state: TableState): boolean {
  return !state.locked && chosenPrint(state) !== null;
}

/** Whether the print in hand can be moved, sized or turned: it can be changed and is not pinned. */
export function canMovePrint(state: TableState): boolean {
  return canEditPrint(state) && !state.pinned.includes(state.selection?.printId ?? '');
}

/** The print in hand. Throws without one: `canRun` was not asked. */
export function printInHand(state: TableState): ChosenPrint {
  const chosen = chosenPrint(state);
  if (!chosen) throw new Error(`no print in hand: ${state.selection?.printId ?? 'none chosen'}`);
  return chosen;
}

/** The layout with one print changed; the very same layout when the print comes back unchanged. */
export function withPrint(layout: LayoutDocument, printId: string, change: (print: Print) => Print): LayoutDocument {
  const before = layout.prints.find((print) => print.printId === printId);
  if (!before) throw new Error(`no print ${printId} in this layout`);
  const after = change(before);
  return after === before
    ? layout
    : { ...layout, prints: layout.prints.map((print) => (print === before ? after : print)) };
}

/** The layout with some readings of one size group changed; the very same layout when they read as before. */
export function withReadings(
  layout: LayoutDocument,
  { print, group }: Pick<ChosenPrint, 'print' | 'group'>,
  readings: Partial<GroupReadings>,
): LayoutDocument {
  const next = { ...group, ...readings };
  if (readAlike(next, group)) return layout;
  return withPrint(layout, print.printId, (each) => ({
    ...each,
    sizeGroups: each.sizeGroups.map((other) => (other.groupId === group.groupId ? next : other)),
  }));
}
