import type { LayoutDocument } from '@/lib/domain/layout/document';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { Selection } from './selection';

/** Everything that can be done to a layout at the table; the catalogue has a word for each. */
export const COMMAND_IDS = [
  'addPrint',
  'removePrint',
  'movePrint',
  'nudgePrint',
  'centrePrint',
  'resizePrint',
  'setWidth',
  'setHeight',
  'setDrop',
  'setAcross',
  'setTurn',
  'setLocation',
  'renamePrint',
  'fitSizes',
] as const;
export type CommandId = (typeof COMMAND_IDS)[number];

/** What an undo step is called: a command, or taking over what somebody else saved. */
export type EditLabel = CommandId | 'takeTheirs';

/** What a command is given: the layout, what lies on the table, the shop's unit, and whether the layout is signed off. */
export type TableState = {
  readonly layout: LayoutDocument;
  readonly selection: Selection | null;
  readonly unit: LengthUnit;
  readonly locked: boolean;
};

/**
 * One edit of the table. Button, menu, key and pointer run the same command, asking the same `canRun` first. `run` gives
 * the next layout, or the very same one when the edit changes nothing; it never changes the one it was given.
 */
export type Command<Arguments> = {
  readonly id: CommandId;
  /** Key strokes that run it, as `strokeText` writes them. */
  readonly keys: readonly string[];
  readonly canRun: (state: TableState) => boolean;
  readonly run: (state: TableState, args: Arguments) => LayoutDocument;
};
