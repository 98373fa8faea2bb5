import { createStore, del, entries, get, set } from 'idb-keyval';
import type { KeptTable } from '@/lib/editor/kept-table';

/** How many jobs' tables a browser keeps; the ones left longest ago go first (common practice, no source). */
const MOST_TABLES = 20;
/** A store that does not answer must not keep the table from being laid out. */
const PATIENCE_MS = 1_500;

type Stored = { readonly at: number; readonly table: KeptTable };

// Made at first use: there is no such store on the server.
let made: ReturnType<typeof createStore> | null = null;
function store(): ReturnType<typeof createStore> {
  made ??= createStore('yokemark-tables', 'tables');
  return made;
}

/** What this browser keeps of a job's table; undefined where it keeps nothing or may not (a private window). */
export async function storedTable(jobId: string): Promise<unknown> {
  const patience = new Promise<undefined>((resolve) => setTimeout(() => resolve(undefined), PATIENCE_MS));
  const found = get<Stored>(jobId, store()).then(
    (kept) => kept?.table,
    () => undefined,
  );
  return Promise.race([found, patience]);
}

/** Keeps a job's table in this browser. Where that fails nothing is lost but the way back after a reload. */
export async function storeTable(jobId: string, table: KeptTable): Promise<void> {
  await set(jobId, { at: Date.now(), table } satisfies Stored, store()).catch(() => undefined);
}

/** Lets go of the tables left longest ago. */
export async function tidyTables(): Promise<void> {
  const all = await entries<string, Stored>(store()).catch(() => []);
  const oldest = all.sort(([, a], [, b]) => b.at - a.at).slice(MOST_TABLES);
  await Promise.all(oldest.map(([jobId]) => del(jobId, store()).catch(() => undefined)));
}
