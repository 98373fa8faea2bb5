import { expect, it } from 'vitest';
import { ListKeeper, type SaveListAnswer } from '@/components/roster/list-keeper';
import { editListInTurn } from '@/lib/domain/people/edit-list';
import type { PeopleList } from '@/lib/domain/people/list';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import { line, listOf } from '../people/some-list';

const by = () => ({ by: 'Robin', at: '2026-10-03T10:00:00.000Z', letteredColumnIds: [] });
const start = () => listOf({ ...line('Mia Ode', '7'), personId: 'mia' }, { ...line('Bo Carr', '22'), personId: 'bo' });
const number = (personId: string, was: string, text: string): ListEdit => ({
  edit: 'field',
  personId,
  columnId: 'number',
  was,
  text,
});

/** Where lists are kept, as the server does it, reached only while it is on. */
function shelf(list: PeopleList) {
  const kept = { list, isOn: true, sent: 0 };
  const save = async (baseVersion: number, edits: readonly ListEdit[]): Promise<SaveListAnswer> => {
    if (!kept.isOn) throw new Error('unreachable');
    kept.sent += 1;
    const made = editListInTurn(kept.list, edits, by());
    kept.list = { ...made.list, version: kept.list.version + 1 };
    const isOwn = made.refused.length === 0 && kept.list.version === baseVersion + 1;
    return { ok: true, version: kept.list.version, list: isOwn ? null : kept.list, refused: made.refused };
  };
  return { kept, save };
}

const numbers = ({ lines }: PeopleList) => lines.map(({ fields }) => fields.number);
const settled = (keeper: ListKeeper) => expect.poll(keeper.isKept).toBe(true);

it('saves what is written, one save at a time, and takes it back the same way', async () => {
  const { kept, save } = shelf(start());
  const keeper = new ListKeeper({ list: start(), save, by });
  keeper.edit([number('mia', '7', '8')]);
  keeper.edit([number('bo', '22', '23')]);
  expect(numbers(keeper.shown().list)).toEqual(['8', '23']);
  await settled(keeper);
  expect(numbers(kept.list)).toEqual(['8', '23']);
  expect(keeper.shown().saving).toEqual({ kind: 'saved' });
  keeper.undo();
  keeper.undo();
  keeper.redo();
  await settled(keeper);
  expect(numbers(kept.list)).toEqual(['8', '22']);
  expect(keeper.version()).toBe(kept.list.version);
});

it('keeps what somebody else wrote first, says so, and keeps the rest of what was written', async () => {
  const { kept, save } = shelf(start());
  const keeper = new ListKeeper({ list: start(), save, by });
  await save(1, [number('mia', '7', '15')]);
  keeper.edit([number('mia', '7', '51'), number('bo', '22', '23')]);
  await settled(keeper);
  expect(numbers(kept.list)).toEqual(['15', '23']);
  expect(numbers(keeper.shown().list)).toEqual(['15', '23']);
  expect(keeper.shown().refused).toMatchObject([{ reason: 'changedElsewhere', edit: { personId: 'mia', text: '51' } }]);
});

it('goes on by itself once the shop can be reached again, with everything written meanwhile', async () => {
  const { kept, save } = shelf(start());
  const keeper = new ListKeeper({ list: start(), save, by, retryMs: 5 });
  kept.isOn = false;
  keeper.edit([number('mia', '7', '8')]);
  await expect.poll(() => keeper.shown().saving).toEqual({ kind: 'trying', reason: 'unreachable' });
  keeper.edit([number('bo', '22', '23')]);
  expect(numbers(keeper.shown().list)).toEqual(['8', '23']);
  kept.isOn = true;
  await settled(keeper);
  expect(numbers(kept.list)).toEqual(['8', '23']);
});

it('takes in what others did while nothing of its own is under way', () => {
  const { save } = shelf(start());
  const keeper = new ListKeeper({ list: start(), save, by });
  const theirs = { ...start(), version: 5, lines: start().lines.slice(0, 1) };
  keeper.take(theirs);
  expect(keeper.shown().list).toBe(theirs);
  keeper.take({ ...start(), version: 4 });
  expect(keeper.shown().list).toBe(theirs);
});
