import { z } from 'zod';
import { fieldsSchema, type ListItem, listItemSchema } from '@/lib/domain/people/list';
import type { MakerAccess } from '../auth/maker-access';
import { reader } from '../db/database';

/** What a line said before or after a change. */
export type LineSaid = { readonly fields: Readonly<Record<string, string>>; readonly items: readonly ListItem[] };

/** One change to a line of the list: what it said, who changed it and when. */
export type LineChange = {
  readonly personId: string;
  readonly kind: 'added' | 'changed' | 'removed' | 'confirmed' | 'unconfirmed';
  /** Who made it; null where the name is gone. */
  readonly by: string | null;
  readonly at: Date;
  readonly before: LineSaid | null;
  readonly after: LineSaid | null;
};

/** As many changes as a page looks back on. */
const MOST_SHOWN = 200;
const kind = z.enum(['added', 'changed', 'removed', 'confirmed', 'unconfirmed']);
const said = z.object({ fields: fieldsSchema, items: z.array(listItemSchema) });

/** The latest changes to a job's list, newest first. */
export async function listHistory(_maker: MakerAccess, jobId: string): Promise<LineChange[]> {
  const rows = await reader().personChange.findMany({
    where: { jobId },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    take: MOST_SHOWN,
  });
  const ids = (of: 'userId' | 'contactId') => [...new Set(rows.flatMap((row) => row[of] ?? []))];
  const [users, contacts] = await Promise.all([
    reader().user.findMany({ where: { id: { in: ids('userId') } }, select: { id: true, name: true } }),
    reader().contact.findMany({ where: { id: { in: ids('contactId') } }, select: { id: true, name: true } }),
  ]);
  const names = new Map([...users, ...contacts].map(({ id, name }) => [id, name]));
  return rows.map((row) => ({
    personId: row.personId,
    kind: kind.parse(row.kind),
    by: names.get(row.userId ?? row.contactId ?? '') ?? null,
    at: row.at,
    before: row.beforeJson === null ? null : said.parse(JSON.parse(row.beforeJson)),
    after: row.afterJson === null ? null : said.parse(JSON.parse(row.afterJson)),
  }));
}
