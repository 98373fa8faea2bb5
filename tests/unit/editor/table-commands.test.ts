import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layoutFault } from '@/lib/domain/layout/faults';
import { commandForStroke, TABLE_COMMANDS, tableCommand } from '@/lib/editor/table-commands';
import { newTableEditor, shownLayout, type TableEditor, wholeLayout, withLock } from '@/lib/editor/table-editor';
import { withPinned } from '@/lib/editor/working-aids';
import { DOINGS, done, newId, TWO_GARMENTS } from './command-doings';
import { readingsOf, tableWith } from './sample-table';

const anyCommand = fc.constantFrom(...TABLE_COMMANDS);
const newTable = () => newTableEditor(TWO_GARMENTS, 'in', false);

function ran(editor: TableEditor, id: Parameters<typeof tableCommand>[0]): TableEditor {
  const command = tableCommand(id);
  expect(command.refusal(editor)).toBeNull();
  return command.run(editor, { newId });
}

describe('the list of all commands', () => {
  it('has one command a name and one a key stroke', () => {
    const ids = TABLE_COMMANDS.map(({ id }) => id);
    const keys = TABLE_COMMANDS.flatMap((command) => [...command.keys]);
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(keys).size).toBe(keys.length);
    for (const command of TABLE_COMMANDS)
      for (const stroke of command.keys) expect(commandForStroke(stroke)).toBe(command);
  });

  it('runs a command exactly when nothing stands in its way, and then something changes unless it says it may be so already', () => {
    fc.assert(
      fc.property(
        fc.array(DOINGS, { maxLength: 12 }),
        fc.array(anyCommand, { minLength: 1, maxLength: 12 }),
        (all, commands) => {
          let editor = all.reduce(done, newTable());
          for (const command of commands) {
            const refusal = command.refusal(editor);
            const next = command.run(editor, { newId });
            if (refusal === null && !('canBeIdle' in command)) expect(next).not.toBe(editor);
            if (refusal !== null && refusal !== 'signedOff') {
              expect([command.id, wholeLayout(next) === wholeLayout(editor)]).toEqual([command.id, true]);
            }
            expect(layoutFault(wholeLayout(next))).toBeNull();
            editor = next;
          }
        },
      ),
      { numRuns: 150 },
    );
  });

  it('says of every command that edits that the layout is signed off, and changes nothing', () => {
    fc.assert(
      fc.property(fc.array(DOINGS, { maxLength: 8 }), anyCommand, (all, command) => {
        const locked = withLock(all.reduce(done, newTable()), true);
        expect(wholeLayout(command.run(locked, { newId }))).toBe(wholeLayout(locked));
        if (command.section !== 'looking') expect(command.refusal(locked)).toBe('signedOff');
      }),
    );
  });
});

describe('a pinned print', () => {
  it('is moved, sized and turned by nothing, and can still be laid higher, hidden or removed', () => {
    const pinned = withPinned(tableWith(['fullFront', 'leftChest']), 'fullFront', true);
    for (const command of TABLE_COMMANDS) {
      const next = command.run(pinned, { newId });
      const [before, after] = [pinned, next].map((editor) =>
        wholeLayout(editor).prints.find(({ printId }) => printId === 'fullFront'),
      );
      if (command.id === 'remove') expect(after).toBeUndefined();
      else expect(after).toBe(before);
    }
    expect(tableCommand('wider').refusal(pinned)).toBe('pinned');
    expect(tableCommand('raise').refusal(pinned)).toBeNull();
    expect(tableCommand('wider').refusal(ran(pinned, 'pin'))).toBeNull();
  });
});

describe('a hidden print', () => {
  it('is not shown on the paper and stays in the layout', () => {
    const before = tableWith(['fullFront', 'leftChest']);
    const hidden = ran(before, 'hide');
    expect(shownLayout(hidden).prints.map(({ printId }) => printId)).toEqual(['leftChest']);
    expect(shownLayout(hidden)).toBe(shownLayout(hidden));
    expect(wholeLayout(hidden)).toBe(wholeLayout(before));
    expect(shownLayout(ran(hidden, 'showAll'))).toBe(wholeLayout(before));
  });
});

describe('steps by key', () => {
  it('size by the trade’s step and turn by 15°', () => {
    // Common practice, no source: 1/8 in, and 15°.
    const before = tableWith(['fullFront']);
    expect(readingsOf(ran(before, 'wider')).widthUm - readingsOf(before).widthUm).toBe(3_175);
    const turned = ran(ran(before, 'turnBack'), 'turnBack');
    expect(wholeLayout(turned).prints[0]?.turnCentideg).toBe(-3_000);
  });
});
