import { letteredColumns } from '@/lib/domain/layout/with-people';
import { editListInTurn } from '@/lib/domain/people/edit-list';
import type { PeopleList } from '@/lib/domain/people/list';
import type { EditRefusal, ListEdit } from '@/lib/domain/people/list-edit';
import type { MakerAccess } from '../auth/maker-access';
import { write } from '../db/database';
import type { Transaction } from '../db/open-database';
import { jobProgress, listKeyOf, progressRows } from '../jobs/job-standing';
import { listOf } from './list-rows';
import { storeList } from './store-list';

export type EditPeopleResult =
  | {
      readonly ok: true;
      /** The list as it is now. */
      readonly list: PeopleList;
      /** Changes that were not made, by their place among those asked for. */
      readonly refused: readonly { readonly at: number; readonly reason: EditRefusal }[];
    }
  | { readonly ok: false; readonly reason: 'noJob' | 'locked' | 'takenIds' };

/**
 * Makes changes to a job's list, one after the other in one transaction. Each that somebody else was faster with is left
 * out and named; the rest are made. The history says who made them.
 */
export async function editPeople(
  maker: MakerAccess,
  jobId: string,
  edits: readonly ListEdit[],
): Promise<EditPeopleResult> {
  return write(async (tx): Promise<EditPeopleResult> => {
    const now = new Date();
    const touched = await tx.draft.updateMany({ where: { jobId }, data: { updatedAt: now } });
    if (touched.count === 0) return { ok: false, reason: 'noJob' };
    const job = await tx.job.findUniqueOrThrow({ where: { id: jobId }, include: progressRows });
    const before = await listOf(tx, listKeyOf(job), 'readAnew');
    const { layout, locked } = jobProgress(job, before);
    if (locked) return { ok: false, reason: 'locked' };
    if (await usesTakenIds(tx, jobId, before, edits)) return { ok: false, reason: 'takenIds' };
    const by = { by: maker.name, at: now.toISOString(), letteredColumnIds: letteredColumns(layout) };
    const { list, refused } = editListInTurn(before, edits, by);
    if (list === before) return { ok: true, list: before, refused };
    const changedBy = { userId: maker.userId, contactId: null };
    return { ok: true, list: await storeList(tx, jobId, before, list, changedBy, now), refused };
  });
}

/** Ids of new lines and items are made where they are written: none may be that of another job's or of another line's. */
async function usesTakenIds(
  tx: Transaction,
  jobId: string,
  list: PeopleList,
  edits: readonly ListEdit[],
): Promise<boolean> {
  const people = edits.flatMap((edit) => (edit.edit === 'add' ? [edit.line.personId] : []));
  const owners = new Map(list.lines.flatMap(({ personId, items }) => items.map(({ itemId }) => [itemId, personId])));
  const items = new Map<string, string>();
  for (const edit of edits) {
    const [personId, written] =
      edit.edit === 'add'
        ? [edit.line.personId, edit.line.items]
        : edit.edit === 'items'
          ? [edit.personId, edit.items]
          : ['', []];
    for (const { itemId } of written) {
      if ((items.get(itemId) ?? owners.get(itemId) ?? personId) !== personId) return true;
      items.set(itemId, personId);
    }
  }
  const others = { not: jobId };
  for (const part of parts(people)) {
    if (await tx.person.findFirst({ where: { id: { in: part }, jobId: others }, select: { id: true } })) return true;
  }
  for (const part of parts([...items.keys()])) {
    if (await tx.item.findFirst({ where: { id: { in: part }, person: { jobId: others } }, select: { id: true } }))
      return true;
  }
  return false;
}

function parts(ids: readonly string[]): string[][] {
  return Array.from({ length: Math.ceil(ids.length / 500) }, (_, at) => ids.slice(at * 500, (at + 1) * 500));
}
