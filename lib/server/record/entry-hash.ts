import { createHash } from 'node:crypto';
import { canonicalBytes, sha256Hex } from '@/lib/domain/revision/canonical';

/** One entry of a job's record, without its own hash. */
export interface Entry {
  readonly jobId: string;
  /** From 1, without gaps. */
  readonly seq: number;
  readonly kind: string;
  readonly payloadHash: string;
  /** The hash of the entry before; empty for the first. */
  readonly previousHash: string;
  readonly at: Date;
}

/** SHA-256 (hex) of salt and payload: without the salt nobody can try out what an erased payload said. */
export function payloadHash(salt: Uint8Array, bytes: Uint8Array): string {
  return createHash('sha256').update(salt).update(bytes).digest('hex');
}

/** SHA-256 (hex) over the canonical JSON (RFC 8785) of an entry: the link of the chain. */
export function entryHash({ jobId, seq, kind, payloadHash, previousHash, at }: Entry): string {
  return sha256Hex(canonicalBytes({ job: jobId, seq, kind, payloadHash, previousHash, at: at.toISOString() }));
}
