import { z } from 'zod';
import type { LayoutDocument } from '../layout/document';
import { layoutDocumentSchema } from '../layout/document';
import { columnSchema, type People, type Person } from '../people/person';
import { canonicalBytes, type JsonValue, sha256Hex } from './canonical';

const sha = z.string().regex(/^[0-9a-f]{64}$/);

/**
 * What a seal covers, format 1. The layout holds resolved measures and frozen flats; people are present by hash only, so
 * that their names can be erased and the rest still verifies. The bytes are stored and served as they are.
 */
export const envelopeSchema = z.object({
  format: z.literal(1),
  shop: z.object({ id: z.string(), name: z.string() }),
  job: z.object({ id: z.string(), title: z.string() }),
  number: z.number().int().min(1),
  locale: z.string(),
  unit: z.enum(['in', 'cm']),
  layout: layoutDocumentSchema.omit({ people: true, statement: true }),
  rosterHash: sha,
  /** The columns of the list, which name nobody; left out where there is no list. */
  columns: z.array(columnSchema).optional(),
  statement: z.string(),
  scenes: z.array(z.object({ key: z.string(), sha256: sha })),
  previousSeal: sha.nullable(),
});
export type Envelope = z.infer<typeof envelopeSchema>;

/** An envelope with its canonical bytes and the SHA-256 of those bytes. */
export type SealedEnvelope = { readonly envelope: Envelope; readonly bytes: Uint8Array; readonly seal: string };

/** Seals an envelope: its RFC 8785 bytes, and their SHA-256. Throws when the envelope is not of format 1. */
export function sealEnvelope(envelope: Envelope): SealedEnvelope {
  const checked = envelopeSchema.parse(envelope);
  const bytes = canonicalBytes(checked as unknown as JsonValue);
  return { envelope: checked, bytes, seal: sha256Hex(bytes) };
}

/** Reads stored envelope bytes of any format that was ever sealed, upgraded in memory; the bytes stay as they are. */
export function readEnvelope(bytes: Uint8Array): Envelope {
  return envelopeSchema.parse(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)));
}

/** The layout part of a document as an envelope holds it. */
export function layoutPart(layout: LayoutDocument): Envelope['layout'] {
  const { people: _people, statement: _statement, ...rest } = layout;
  return rest;
}

/** The hash of one roster line under its own salt: with the salt erased, the name can no longer be guessed from it. */
export function rosterLineHash(line: Person, saltHex: string): string {
  return sha256Hex(canonicalBytes({ line: line as unknown as JsonValue, salt: saltHex }));
}

/** The hash that stands for all people of a revision: over the columns and each line's own salted hash, in order. */
export function rosterHash(columns: People['columns'], lines: readonly { lineId: string; hash: string }[]): string {
  return sha256Hex(canonicalBytes({ columns: columns as unknown as JsonValue, lines: lines as unknown as JsonValue }));
}
