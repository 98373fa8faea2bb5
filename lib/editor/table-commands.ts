import { removePrint } from './commands/change-print';
import { duplicatePrint } from './commands/duplicate-print';
import { oneWidth, suggestGroups } from './commands/group-sizes';
import { keepUnder, letGoOfPrint } from './commands/keep-under';
import { mirrorPrint, mirrorSleeve } from './commands/mirror-print';
import { layAtBottom, layOnTop, lowerPrint, raisePrint } from './commands/order-print';
import { centrePrint, nudgePrint } from './commands/place-print';
import { stepSize, stepTurn } from './commands/step-print';
import { garmentStep, printStep, sideStep, sizeStep, turnOver } from './selection-steps';
import { aiding, editing, looking, redo, type TableCommand, undo } from './table-command';
import { isHidden, isPinned, withAllShown, withHidden, withPinned } from './working-aids';

const nothing = () => undefined;

const PLACE = [
  nudge('nudgeUp', 'up', false),
  nudge('nudgeDown', 'down', false),
  nudge('nudgeLeft', 'left', false),
  nudge('nudgeRight', 'right', false),
  nudge('strideUp', 'up', true),
  nudge('strideDown', 'down', true),
  nudge('strideLeft', 'left', true),
  nudge('strideRight', 'right', true),
  editing({ id: 'usualPlace', section: 'place', keys: ['U'], canBeIdle: true }, centrePrint, nothing),
  editing({ id: 'keepUnder', section: 'place' }, keepUnder, nothing),
  editing({ id: 'letGo', section: 'place' }, letGoOfPrint, nothing),
  aiding({ id: 'pin', section: 'place', keys: ['P'] }, (editor, printId) =>
    withPinned(editor, printId, !isPinned(editor, printId)),
  ),
] as const;

const SIZE = [
  editing({ id: 'wider', section: 'size', keys: ['+', 'Shift++', '='], canBeIdle: true }, stepSize, () => ({
    towards: 'wider' as const,
  })),
  editing({ id: 'narrower', section: 'size', keys: ['-'], canBeIdle: true }, stepSize, () => ({
    towards: 'narrower' as const,
  })),
  editing({ id: 'turnOn', section: 'size', keys: ['T'] }, stepTurn, () => ({ towards: 'clockwise' as const })),
  editing({ id: 'turnBack', section: 'size', keys: ['Shift+T'] }, stepTurn, () => ({ towards: 'back' as const })),
  editing({ id: 'alike', section: 'size', canBeIdle: true }, suggestGroups, (given) => given),
  editing({ id: 'oneWidth', section: 'size', canBeIdle: true }, oneWidth, nothing),
] as const;

const ORDER = [
  editing({ id: 'raise', section: 'order' }, raisePrint, nothing),
  editing({ id: 'lower', section: 'order' }, lowerPrint, nothing),
  editing({ id: 'toTop', section: 'order' }, layOnTop, nothing),
  editing({ id: 'toBottom', section: 'order' }, layAtBottom, nothing),
] as const;

const MORE = [
  editing({ id: 'duplicate', section: 'more' }, duplicatePrint, (given) => given),
  editing({ id: 'mirror', section: 'more', canBeIdle: true }, mirrorPrint, (given) => given),
  editing({ id: 'mirrorSleeve', section: 'more', canBeIdle: true }, mirrorSleeve, (given) => given),
  editing({ id: 'remove', section: 'more' }, removePrint, nothing),
] as const;

const LOOKING = [
  looking({ id: 'turnOver', section: 'looking', keys: ['O'] }, turnOver, 'oneSide'),
  looking({ id: 'nextSide', section: 'looking', keys: ['N'] }, sideStep(1), 'oneSide'),
  looking({ id: 'previousSide', section: 'looking', keys: ['Shift+N'] }, sideStep(-1), 'oneSide'),
  looking({ id: 'nextPrint', section: 'looking', keys: ['.'] }, printStep(1), 'noOtherPrint'),
  looking({ id: 'previousPrint', section: 'looking', keys: [','] }, printStep(-1), 'noOtherPrint'),
  looking({ id: 'nextSize', section: 'looking', keys: ['S'] }, sizeStep(1), 'oneSize'),
  looking({ id: 'previousSize', section: 'looking', keys: ['Shift+S'] }, sizeStep(-1), 'oneSize'),
  looking({ id: 'nextGarment', section: 'looking', keys: ['G'] }, garmentStep(1), 'oneGarment'),
  aiding({ id: 'hide', section: 'looking', keys: ['H'] }, (editor, printId) =>
    withHidden(editor, printId, !isHidden(editor, printId)),
  ),
  {
    id: 'showAll',
    section: 'looking',
    keys: ['Shift+H'],
    refusal: ({ hidden }) => (hidden.length === 0 ? 'noneHidden' : null),
    run: withAllShown,
  } satisfies TableCommand<'showAll'>,
] as const;

/**
 * Every command that can run without being told more, in the order they are listed. Buttons, keys and the list of all
 * commands take them from here; what has to be told more (a width, a location, a garment) is a command of its own file.
 */
export const TABLE_COMMANDS = [...PLACE, ...SIZE, ...ORDER, ...MORE, ...LOOKING, undo, redo] as const;

export type TableCommandId = (typeof TABLE_COMMANDS)[number]['id'];

/** The command of this name. */
export function tableCommand(id: TableCommandId): TableCommand<TableCommandId> {
  const command = TABLE_COMMANDS.find((each) => each.id === id);
  if (!command) throw new Error(`no command ${id}`);
  return command;
}

/** The command a key stroke runs, or null. */
export function commandForStroke(stroke: string): TableCommand<TableCommandId> | null {
  return TABLE_COMMANDS.find(({ keys }) => keys.includes(stroke)) ?? null;
}

type Towards = Parameters<typeof nudgePrint.run>[1]['direction'];

function nudge<Id extends string>(id: Id, direction: Towards, stride: boolean): TableCommand<Id> {
  const key = `Arrow${direction.charAt(0).toUpperCase()}${direction.slice(1)}`;
  const keys = [stride ? `Shift+${key}` : key];
  return editing({ id, section: 'place', keys, canBeIdle: true }, nudgePrint, () => ({ direction, stride }));
}
