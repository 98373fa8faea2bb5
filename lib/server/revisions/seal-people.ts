import { randomBytes } from 'node:crypto';
import { type Column, columnSchema, type People, type Person, personSchema } from '@/lib/domain/people/person';
import { canonicalBytes, type JsonValue } from '@/lib/domain/revision/canonical';
import { rosterHash, rosterLineHash } from '@/lib/domain/revision/envelope';
import { reader } from '../db/database';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';
import { sealedRevision } from './sealed-files';

/** Length of a line's salt; as long as the hash it goes into (FIPS 180-4, SHA-256). */
const SALT_BYTES = 32;

/** The people part of a revision: its hash, and each line with a salt of its own. */
export type SealedPeople = {
  readonly rosterHash: string;
  readonly columns: readonly Column[];
  readonly lines: readonly { readonly salt: Uint8Array<ArrayBuffer>; readonly bytes: Uint8Array<ArrayBuffer> }[];
};

/** Seals the people of a layout. Each has a salt of their own, so that one can be erased and the rest still verify. */
export function sealPeople({ columns, lines }: People): SealedPeople {
  const salted = lines.map((line) => {
    const salt = Uint8Array.from(randomBytes(SALT_BYTES));
    return { line, salt, hash: rosterLineHash(line, hexOf(salt)) };
  });
  return {
    rosterHash: rosterHash(
      columns,
      salted.map(({ line, hash }) => ({ lineId: line.personId, hash })),
    ),
    columns,
    lines: salted.map(({ line, salt }) => ({
      salt,
      bytes: Uint8Array.from(canonicalBytes(line as unknown as JsonValue)),
    })),
  };
}

/** Keeps the people part beside its revision. */
export async function storePeople(tx: Transaction, revisionId: string, { lines }: SealedPeople): Promise<void> {
  await tx.revisionLine.createMany({
    data: lines.map(({ salt, bytes }, position) => ({ id: newId(), revisionId, position, salt, bytes })),
  });
}

/**
 * The people a revision was sealed with, in their order. Null when there is no such revision. `whole` says whether the hash
 * the seal covers is that of these lines: false once somebody was erased.
 */
export async function sealedPeople(revisionId: string): Promise<{ people: People; whole: boolean } | null> {
  const [revision, rows] = await Promise.all([
    sealedRevision(revisionId),
    reader().revisionLine.findMany({ where: { revisionId }, orderBy: { position: 'asc' } }),
  ]);
  if (!revision) return null;
  const columns = columnSchema.array().parse(revision.envelope.columns ?? []);
  const lines = rows.map(({ bytes, salt }) => ({ line: readLine(bytes), salt }));
  const hashes = lines.map(({ line, salt }) => ({ lineId: line.personId, hash: rosterLineHash(line, hexOf(salt)) }));
  return {
    people: { columns, lines: lines.map(({ line }) => line) },
    whole: rosterHash(columns, hashes) === revision.envelope.rosterHash,
  };
}

function readLine(bytes: Uint8Array): Person {
  return personSchema.parse(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)));
}

function hexOf(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('hex');
}
