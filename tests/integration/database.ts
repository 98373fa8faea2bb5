import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { closeDatabase } from '@/lib/server/db/database';
import { migrateDatabase } from '@/lib/server/db/migrate';
import { newId } from '@/lib/server/db/new-id';
import type { Transaction } from '@/lib/server/db/open-database';

/** A folder and a migrated, empty database of one test file. */
export interface FreshDatabase {
  folder: string;
  url: string;
  remove(): Promise<void>;
}

/**
 * Makes a folder with a migrated database and points the environment at both. Call it before anything asks for the
 * environment: that is read once. `variables` are set besides; every other variable of the app is unset.
 */
export async function freshDatabase(variables: Record<string, string> = {}): Promise<FreshDatabase> {
  const folder = mkdtempSync(join(tmpdir(), 'yokemark-'));
  const url = variables.DATABASE_URL ?? `file:${join(folder, 'yokemark.db')}`;
  for (const name of ['PORT', 'HOST', 'PUBLIC_URL', 'SMTP_URL', 'MAIL_FROM', 'TRUSTED_PROXIES'])
    delete process.env[name];
  Object.assign(process.env, {
    DATABASE_URL: url,
    FILES_DIR: join(folder, 'files'),
    SECRETS_FILE: join(folder, 'secrets.json'),
    MAIL_DIR: join(folder, 'mail'),
    ...variables,
  });
  await migrateDatabase(url);
  return {
    folder,
    url,
    async remove() {
      await closeDatabase();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** A customer with a job that has nothing in it yet; answers with the job's id. */
export async function addJob(tx: Transaction, now: Date, title = 'Autumn relay shirts'): Promise<string> {
  const customer = await tx.customer.create({
    data: { id: newId(), name: 'Saltmarsh Rowing Club', email: 'crew@example.org', createdAt: now },
  });
  const job = await tx.job.create({
    data: {
      id: newId(),
      customerId: customer.id,
      title,
      occasion: 'Autumn relay',
      notes: '',
      neededByLocal: '2026-10-03T09:00',
      timeZone: 'Europe/London',
      neededAt: new Date('2026-10-03T08:00:00Z'),
      recordSeq: 0,
      recordHead: '',
      searchText: title.toLowerCase(),
      createdAt: now,
    },
  });
  return job.id;
}

/** Somebody who may sign for a job; answers with the contact's id. */
export async function addContact(tx: Transaction, jobId: string, now: Date): Promise<string> {
  const contact = await tx.contact.create({
    data: {
      id: newId(),
      jobId,
      name: 'Wren Abara',
      email: 'wren@example.org',
      maySign: true,
      mayRemark: true,
      mayCorrect: false,
      mayCollect: false,
      mustSign: true,
      createdAt: now,
    },
  });
  return contact.id;
}
