import type { LayoutDocument } from '@/lib/domain/layout/document';
import type { SetType, TypeCase } from '@/lib/domain/layout/type-case';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { Selection } from './selection';

/** Everything that can be done to a layout at the table; the catalogue has a word for each. */
export const COMMAND_IDS = [
  'addPrint',
  'addLettering',
  'changeLettering',
  'setLetterHeight',
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
  'goAheadSoft',
  'suggestGroups',
  'oneWidth',
  'keepUnder',
  'letGo',
  'stepSize',
  'stepTurn',
  'setGarments',
  'raisePrint',
  'lowerPrint',
  'layOnTop',
  'layAtBottom',
  'duplicatePrint',
  'mirrorPrint',
  'mirrorSleeve',
  'copySide',
] as const;
export type CommandId = (typeof COMMAND_IDS)[number];

/** What an undo step is called: a command, or taking over what somebody else saved. */
export type EditLabel = CommandId | 'takeTheirs';

/** Why a command cannot run now; the catalogue has a sentence for each. */
export const COMMAND_REFUSALS = [
  'signedOff',
  'noGarment',
  'noPrint',
  'pinned',
  'tooManyPrints',
  'onTop',
  'atBottom',
  'noUsualPlace',
  'noneAbove',
  'notUnder',
  'noMirror',
  'notASleeve',
  'suitsNoOther',
  'oneSide',
  'oneSize',
  'oneGarment',
  'noOtherPrint',
  'noneHidden',
  'nothingToUndo',
  'nothingToRedo',
  'notNow',
] as const;
export type CommandRefusal = (typeof COMMAND_REFUSALS)[number];

/**
 * What a command is given: the layout, what lies on the table, the prints pinned against moving (by id), the shop's unit,
 * whether the layout is signed off, what lettering is set from (null while its fonts are not open), and whose words are
 * looked at (samples for nobody's).
 */
export type TableState = {
  readonly layout: LayoutDocument;
  readonly selection: Selection | null;
  readonly pinned: readonly string[];
  readonly unit: LengthUnit;
  readonly locked: boolean;
  readonly type?: TypeCase | null;
  readonly personId?: string | null;
};

/** What sets the words that are looked at; undefined while the fonts are not open. */
export function shownType({ type, personId }: Pick<TableState, 'type' | 'personId'>): SetType | undefined {
  return type?.of(personId ?? null);
}

/**
 * One edit of the table. Button, menu, key and pointer run the same command, asking the same `canRun` first. `run` gives
 * the next layout, or the very same one when the edit changes nothing; it never changes the one it was given.
 */
export type Command<Arguments> = {
  readonly id: CommandId;
  /** Key strokes that run it, as `strokeText` writes them. */
  readonly keys: readonly string[];
  readonly canRun: (state: TableState) => boolean;
  /** What it acts on: the print in hand unless said. */
  readonly needs?: 'garment';
  /** Why it cannot run where what it acts on is there. */
  readonly otherwise?: CommandRefusal;
  readonly run: (state: TableState, args: Arguments) => LayoutDocument;
};

/**
 * Why a command cannot run, null when it can. Its `canRun` alone decides; what stands in the way is then looked for from
 * the most general to the command's own reason.
 */
export function refusalOf<Arguments>(
  { canRun, needs, otherwise }: Pick<Command<Arguments>, 'canRun' | 'needs' | 'otherwise'>,
  state: TableState,
): CommandRefusal | null {
  if (canRun(state)) return null;
  const { selection, pinned, locked } = state;
  if (locked) return 'signedOff';
  if (!selection) return 'noGarment';
  if (needs === 'garment') return otherwise ?? 'notNow';
  if (selection.printId === null) return 'noPrint';
  // It is the pin that stands in the way where it could run without.
  const couldRun = pinned.includes(selection.printId) && canRun({ ...state, pinned: [] });
  return couldRun ? 'pinned' : (otherwise ?? 'notNow');
}
