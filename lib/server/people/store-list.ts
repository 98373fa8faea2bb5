import type { ListItem, ListLine, PeopleList } from '@/lib/domain/people/list';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';

/** Who changed a list. */
export type ChangedBy = { readonly userId: string | null; readonly contactId: string | null };

/** Between two lines there is room for others: lines are numbered in steps. */
const STEP = 1_024;
/** As many rows as go into one statement; the database takes 32 766 values in one (SQLite, limits.html). */
const MOST_ROWS_AT_ONCE = 500;

/**
 * Writes what changed between two states of a job's list, line by line, with an entry each in its history. The state it
 * becomes has the next version of the list, and changed lines the next of theirs: it is given back.
 */
export async function storeList(
  tx: Transaction,
  jobId: string,
  before: PeopleList,
  after: PeopleList,
  { userId, contactId }: ChangedBy,
  now: Date,
): Promise<PeopleList> {
  const was = new Map(before.lines.map((line) => [line.personId, line]));
  const lines = after.lines.map((line) => {
    const old = was.get(line.personId);
    return old === undefined || old === line ? line : { ...line, version: old.version + 1 };
  });
  const list = { ...after, version: before.version + 1, lines };
  const left = new Set(lines.map(({ personId }) => personId));
  const gone = before.lines.filter(({ personId }) => !left.has(personId));
  const added = lines.filter(({ personId }) => !was.has(personId));
  const changed = lines.filter((line) => {
    const old = was.get(line.personId);
    return old !== undefined && old.version !== line.version;
  });
  await removePeople(
    tx,
    jobId,
    gone.map(({ personId }) => personId),
  );
  await addPeople(tx, jobId, await placesFor(tx, jobId, lines, added), now);
  for (const line of changed) await changePerson(tx, jobId, line, was.get(line.personId));
  const changes = [
    ...gone.map((line) => ({ kind: 'removed', line, before: line, after: null })),
    ...added.map((line) => ({ kind: 'added', line, before: null, after: line })),
    ...changed.map((line) => ({
      kind: kindOfChange(was.get(line.personId), line),
      line,
      before: was.get(line.personId) ?? null,
      after: line,
    })),
  ];
  for (const part of chunks(changes)) {
    await tx.personChange.createMany({
      data: part.map(({ kind, line, before: old, after: next }) => ({
        id: newId(),
        jobId,
        personId: line.personId,
        kind,
        userId,
        contactId,
        beforeJson: old && JSON.stringify(contentOf(old)),
        afterJson: next && JSON.stringify(contentOf(next)),
        at: now,
      })),
    });
  }
  const data = {
    columnsJson: JSON.stringify(list.columns),
    settingsJson: JSON.stringify(list.settings),
    version: list.version,
    updatedAt: now,
  };
  await tx.roster.upsert({ where: { jobId }, create: { jobId, ...data }, update: data });
  return list;
}

function kindOfChange(old: ListLine | undefined, line: ListLine): 'changed' | 'confirmed' | 'unconfirmed' {
  if (!old || JSON.stringify(contentOf(old)) !== JSON.stringify(contentOf(line))) return 'changed';
  if (old.confirmed !== null && line.confirmed === null) return 'unconfirmed';
  return line.confirmed !== null && old.confirmed === null ? 'confirmed' : 'changed';
}

function contentOf({ fields, items, meant }: ListLine) {
  return { fields, items, meant };
}

async function removePeople(tx: Transaction, jobId: string, ids: readonly string[]): Promise<void> {
  for (const part of chunks(ids)) {
    await tx.item.deleteMany({ where: { personId: { in: [...part] } } });
    await tx.person.deleteMany({ where: { jobId, id: { in: [...part] } } });
  }
}

type Placed = { readonly line: ListLine; readonly position: number };

async function addPeople(tx: Transaction, jobId: string, placed: readonly Placed[], now: Date): Promise<void> {
  for (const part of chunks(placed)) {
    await tx.person.createMany({
      data: part.map(({ line, position }) => ({
        id: line.personId,
        jobId,
        position,
        ...rowOf(line),
        createdAt: now,
        updatedAt: now,
      })),
    });
    await tx.item.createMany({ data: part.flatMap(({ line }) => itemRows(line)) });
  }
}

async function changePerson(tx: Transaction, jobId: string, line: ListLine, old: ListLine | undefined): Promise<void> {
  await tx.person.update({ where: { id: line.personId, jobId }, data: rowOf(line) });
  if (JSON.stringify(old?.items) === JSON.stringify(line.items)) return;
  await tx.item.deleteMany({ where: { personId: line.personId } });
  await tx.item.createMany({ data: itemRows(line) });
}

/** Where added lines stand among the others. Where there is no room left between two lines, all are numbered anew. */
async function placesFor(
  tx: Transaction,
  jobId: string,
  lines: readonly ListLine[],
  added: readonly ListLine[],
): Promise<Placed[]> {
  if (added.length === 0) return [];
  const rows = await tx.person.findMany({ where: { jobId }, select: { id: true, position: true } });
  const known = new Map(rows.map(({ id, position }) => [id, position]));
  const positions = spreadPositions(lines.map(({ personId }) => known.get(personId) ?? null));
  const isNew = new Set(added);
  for (const [at, line] of lines.entries()) {
    const position = positions[at] ?? 0;
    if (!isNew.has(line) && known.get(line.personId) !== position) {
      await tx.person.update({ where: { id: line.personId }, data: { position } });
    }
  }
  return lines.flatMap((line, at) => (isNew.has(line) ? [{ line, position: positions[at] ?? 0 }] : []));
}

/** Positions for lines in their order; those that have one keep it where the others find room. */
export function spreadPositions(positions: readonly (number | null)[]): number[] {
  const spread: number[] = [];
  for (let at = 0; at < positions.length; at += 1) {
    const own = positions[at];
    const last = spread.at(-1) ?? 0;
    if (own !== null && own !== undefined) {
      if (own <= last) return positions.map((_, index) => (index + 1) * STEP);
      spread.push(own);
      continue;
    }
    const nextAt = positions.findIndex((each, index) => index > at && each !== null);
    const next = nextAt < 0 ? null : (positions[nextAt] ?? null);
    const between = next === null ? last + STEP : last + Math.floor((next - last) / (nextAt - at + 1));
    if (between <= last) return positions.map((_, index) => (index + 1) * STEP);
    spread.push(between);
  }
  return spread;
}

function rowOf({ fields, meant, version, confirmed }: ListLine) {
  return {
    fieldsJson: JSON.stringify(fields),
    meantJson: JSON.stringify(meant),
    version,
    confirmedAt: confirmed && new Date(confirmed.at),
    confirmedBy: confirmed?.by ?? null,
  };
}

function itemRows({ personId, items }: ListLine) {
  return items.map((item, position) => ({
    id: item.itemId,
    personId,
    position,
    garmentKey: item.garmentId,
    ...sizeKeys(item),
    quantity: item.quantity,
  }));
}

function sizeKeys({ size, typed }: ListItem): { blankKey: string; sizeKey: string } {
  return size ? { blankKey: size.blankId, sizeKey: size.sizeId } : { blankKey: '', sizeKey: typed };
}

function chunks<Each>(all: readonly Each[]): readonly Each[][] {
  return Array.from({ length: Math.ceil(all.length / MOST_ROWS_AT_ONCE) }, (_, at) =>
    all.slice(at * MOST_ROWS_AT_ONCE, (at + 1) * MOST_ROWS_AT_ONCE),
  );
}
