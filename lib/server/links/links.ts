import { flatRead, reader } from '../db/database';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';
import { environment } from '../env/environment';
import { secrets } from '../secrets/secrets';
import { type LinkAccess, type LinkAccessFields, type LinkMay, linkMaySchema } from './link-access';
import { type LinkClaim, lastGeneration, linkToken, readToken } from './link-token';

/** A link as it is kept: enough, with the shop's key, to make its address. */
export interface Link extends LinkClaim {
  readonly contactId: string;
  readonly mayJson: string;
  readonly expiresAt: Date;
  readonly revokedAt: Date | null;
}

/** What a link leads to: a contact's proof sheet, or the page where they hand in pictures. They are never one link. */
export type LinkPurpose = 'proof' | 'art';

function purposeOf({ mayJson }: Pick<Link, 'mayJson'>): LinkPurpose {
  return linkMaySchema.parse(JSON.parse(mayJson)).upload ? 'art' : 'proof';
}

/**
 * Gives a contact their link: the one they have for this purpose, if it is still good, or a new one. What it may do is set
 * to `may`; it lasts until `expiresAt` at least.
 */
export async function issueLink(
  tx: Transaction,
  { contactId, may, expiresAt }: { contactId: string; may: LinkMay; expiresAt: Date },
  now: Date,
): Promise<Link> {
  const mayJson = JSON.stringify(may);
  const good = await tx.link.findMany({
    where: { contactId, revokedAt: null, expiresAt: { gt: now } },
    orderBy: { createdAt: 'desc' },
  });
  const there = good.find((link) => purposeOf(link) === (may.upload ? 'art' : 'proof'));
  if (there) {
    const later = expiresAt > there.expiresAt ? expiresAt : there.expiresAt;
    return tx.link.update({ where: { id: there.id }, data: { mayJson, expiresAt: later } });
  }
  const keyVersion = secrets().linkKeys[0].version;
  return tx.link.create({
    data: { id: newId(), contactId, generation: 1, keyVersion, mayJson, expiresAt, createdAt: now },
  });
}

/** Gives a link a new address, made with the newest key; every address it had before is dead. Also brings back a revoked one. */
export async function renewLink(tx: Transaction, linkId: string, expiresAt: Date): Promise<Link> {
  const { generation } = await tx.link.update({
    where: { id: linkId },
    data: { generation: { increment: 1 }, keyVersion: secrets().linkKeys[0].version, expiresAt, revokedAt: null },
    select: { generation: true },
  });
  if (generation > lastGeneration) throw new Error(`Link ${linkId} was renewed ${generation} times.`);
  return tx.link.findUniqueOrThrow({ where: { id: linkId } });
}

/** Ends a link for good, until it is renewed. */
export async function revokeLink(tx: Transaction, linkId: string, now: Date): Promise<void> {
  await tx.link.updateMany({ where: { id: linkId, revokedAt: null }, data: { revokedAt: now } });
}

/** The address to send: where customers find the shop, from the environment alone, and the link's token. */
export function linkUrl(link: LinkClaim, purpose: LinkPurpose = 'proof'): string {
  return `${environment().publicUrl}/${purpose}/${linkToken(link)}`;
}

/** The links of a job for one purpose that are good now, the newest of each contact, by contact id. */
export async function liveLinks(
  jobId: string,
  now = new Date(),
  purpose: LinkPurpose = 'proof',
): Promise<Map<string, Link>> {
  const rows = await reader().link.findMany({
    where: { contact: { jobId }, revokedAt: null, expiresAt: { gt: now } },
    orderBy: { createdAt: 'asc' },
  });
  return new Map(rows.filter((row) => purposeOf(row) === purpose).map((row) => [row.contactId, row]));
}

interface LinkRow {
  generation: number;
  keyVersion: number;
  mayJson: string;
  expiresAt: Date;
  revokedAt: Date | null;
  contactId: string;
  contactName: string | null;
  jobId: string;
  signer: string | null;
}

function isGood(row: LinkRow, claim: LinkClaim, now: Date): boolean {
  return (
    Number(row.generation) === claim.generation &&
    Number(row.keyVersion) === claim.keyVersion &&
    row.revokedAt === null &&
    new Date(row.expiresAt) > now
  );
}

/**
 * The one gate for customers: turns the token of an address into proof of access. Null for a made-up, altered, expired,
 * revoked or renewed one alike, and for one of the other purpose; each takes the same one read.
 */
export async function openLink(
  token: string,
  now = new Date(),
  purpose: LinkPurpose = 'proof',
): Promise<LinkAccess | null> {
  const read = readToken(token);
  const rows = await flatRead<LinkRow>`
    SELECT l."generation", l."keyVersion", l."mayJson", l."expiresAt", l."revokedAt",
           c."id" AS "contactId", c."name" AS "contactName", c."jobId", s."id" AS "signer"
    FROM "Link" l
    JOIN "Contact" c ON c."id" = l."contactId"
    LEFT JOIN "Contact" s ON s."jobId" = c."jobId" AND s."mustSign"
    WHERE l."id" = ${read?.claim.id ?? ''}
    ORDER BY s."createdAt", s."id"`;
  const [row] = rows;
  if (!(read?.genuine && row && isGood(row, read.claim, now) && purposeOf(row) === purpose)) return null;
  const access: LinkAccessFields = {
    linkId: read.claim.id,
    contactId: row.contactId,
    contactName: row.contactName,
    jobId: row.jobId,
    may: linkMaySchema.parse(JSON.parse(row.mayJson)),
    mustSign: rows.map(({ signer }) => signer).filter((id) => id !== null),
  };
  return access as LinkAccess;
}
