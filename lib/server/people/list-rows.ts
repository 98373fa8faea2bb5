import { LRUCache } from 'lru-cache';
import { z } from 'zod';
import {
  columnsSchema,
  EMPTY_LIST,
  fieldsSchema,
  type ListItem,
  type ListLine,
  listSettingsSchema,
  meantSchema,
  type PeopleList,
  STARTING_COLUMNS,
  STARTING_SETTINGS,
} from '@/lib/domain/people/list';
import type { Reader, Transaction } from '../db/open-database';

/** What is asked of a job's row to know which state of its list is meant. */
export const rosterRow = { select: { version: true, columnsJson: true, settingsJson: true } } as const;
export type RosterRow = {
  readonly version: number;
  readonly columnsJson: string;
  readonly settingsJson: string;
} | null;

/** Of a job, what names a state of its list. */
export type ListKey = { readonly id: string; readonly roster: RosterRow };

const meant = z.array(meantSchema);

/** The tables a list is read from. */
type Lists = Pick<Reader | Transaction, 'person' | 'item' | 'roster'>;

/** Lists that are being looked at, by job and version: one version of a list never changes. */
const MOST_KEPT_LISTS = 300;
const kept = new LRUCache<string, PeopleList>({ max: MOST_KEPT_LISTS });

/**
 * The lists of several jobs, by job id. Inside a transaction give it the transaction: what is read there is not kept, since
 * it may be rolled back.
 */
export async function listsOf(
  db: Lists,
  jobs: readonly ListKey[],
  keep: 'keep' | 'readAnew',
): Promise<ReadonlyMap<string, PeopleList>> {
  const written = jobs.filter(({ roster }) => roster !== null);
  const known = new Map(written.flatMap((job) => keptList(job)));
  const unknown = written.filter(({ id }) => !known.has(id));
  if (unknown.length > 0) {
    const jobIds = unknown.map(({ id }) => id);
    const rows = await readPeople(db, jobIds);
    // What was written since the job's row was read is the list as it is now, and not to be kept as the one that was asked for.
    const now = await db.roster.findMany({ where: { jobId: { in: jobIds } }, select: { jobId: true, version: true } });
    for (const job of unknown) {
      const ofJob = rows.filter(({ jobId }) => jobId === job.id);
      const list = listOfRows(job.roster, ofJob);
      known.set(job.id, list);
      const isStill = now.some(({ jobId, version }) => jobId === job.id && version === job.roster?.version);
      if (keep === 'keep' && isStill) kept.set(keyOf(job), list);
    }
  }
  return new Map(jobs.map(({ id }) => [id, known.get(id) ?? EMPTY_LIST]));
}

/** The list of one job; see `listsOf`. */
export async function listOf(db: Lists, job: ListKey, keep: 'keep' | 'readAnew'): Promise<PeopleList> {
  return (await listsOf(db, [job], keep)).get(job.id) ?? EMPTY_LIST;
}

function keptList(job: ListKey): [string, PeopleList][] {
  const list = kept.get(keyOf(job));
  return list ? [[job.id, list]] : [];
}

function keyOf({ id, roster }: ListKey): string {
  return `${id} ${roster?.version ?? 0}`;
}

type PersonRow = Awaited<ReturnType<typeof readPeople>>[number];
type ItemRow = Awaited<ReturnType<Lists['item']['findMany']>>[number];

/** Items are asked for by their job: a database takes only so many ids of people in one statement (SQLite, limits.html). */
async function readPeople(db: Lists, jobIds: string[]) {
  const where = { jobId: { in: jobIds } };
  const [people, items] = await Promise.all([
    db.person.findMany({ where, orderBy: [{ position: 'asc' }, { id: 'asc' }] }),
    db.item.findMany({ where: { person: where }, orderBy: { position: 'asc' } }),
  ]);
  const byPerson = new Map<string, ItemRow[]>();
  for (const item of items) byPerson.set(item.personId, [...(byPerson.get(item.personId) ?? []), item]);
  return people.map((person) => ({ ...person, items: byPerson.get(person.id) ?? [] }));
}

function listOfRows(roster: RosterRow, rows: readonly PersonRow[]): PeopleList {
  return {
    version: roster?.version ?? 0,
    columns: roster ? columnsSchema.parse(JSON.parse(roster.columnsJson)) : STARTING_COLUMNS,
    settings: roster ? listSettingsSchema.parse(JSON.parse(roster.settingsJson)) : STARTING_SETTINGS,
    lines: rows.map(lineOfRow),
  };
}

function lineOfRow(row: PersonRow): ListLine {
  return {
    personId: row.id,
    fields: fieldsSchema.parse(JSON.parse(row.fieldsJson)),
    items: row.items.map(itemOfRow),
    meant: meant.parse(JSON.parse(row.meantJson)),
    version: row.version,
    confirmed: row.confirmedAt && { by: row.confirmedBy ?? '', at: row.confirmedAt.toISOString() },
  };
}

/** A size nobody could read has no blank: what was written then stands in the place of the size. */
function itemOfRow({ id, garmentKey, blankKey, sizeKey, quantity }: ItemRow): ListItem {
  const isRead = blankKey !== '';
  return {
    itemId: id,
    garmentId: garmentKey,
    size: isRead ? { blankId: blankKey, sizeId: sizeKey } : null,
    typed: isRead ? '' : sizeKey,
    quantity,
  };
}
