import { ART_FACTS_FORMAT, type ArtFacts, artFactsSchema } from '@/lib/domain/art/art-facts';
import { reader, write } from '../db/database';
import type { Reader, Transaction } from '../db/open-database';
import { artFiles } from '../files/store';
import type { CheckPictureRequest } from '../image/check-picture';
import { runInWorker } from '../workers/pool';

const CHECK_LIMIT_MS = 60_000;

/** Keeps what was measured of a picture; what was measured of it before gives way. */
export async function keepCheck(tx: Transaction, pictureSha256: string, facts: ArtFacts, now: Date): Promise<void> {
  const check = { format: facts.format, json: JSON.stringify(facts), madeAt: now };
  await tx.artCheck.upsert({ where: { pictureSha256 }, create: { pictureSha256, ...check }, update: check });
}

/** What is known of pictures, by their SHA-256; a picture that has to be measured again is not among them. */
export async function checksOf(
  tables: Pick<Reader, 'artCheck'>,
  pictureSha256s: readonly string[],
): Promise<Map<string, ArtFacts>> {
  if (pictureSha256s.length === 0) return new Map();
  const rows = await tables.artCheck.findMany({
    where: { pictureSha256: { in: [...new Set(pictureSha256s)] }, format: ART_FACTS_FORMAT },
  });
  return new Map(
    rows.flatMap(({ pictureSha256, json }) => {
      const facts = artFactsSchema.safeParse(JSON.parse(json));
      return facts.success ? [[pictureSha256, facts.data] as const] : [];
    }),
  );
}

/**
 * What the pixels of a kept picture say, measured now where that was not done yet or was done otherwise. Null where no such
 * picture is kept. Throws a `WorkerError` where it takes too long.
 */
export async function ensureChecked(pictureSha256: string, signal?: AbortSignal): Promise<ArtFacts | null> {
  const known = (await checksOf(reader(), [pictureSha256])).get(pictureSha256);
  if (known) return known;
  if (!(await artFiles().has(pictureSha256))) return null;
  const request = { picturePath: artFiles().pathOf(pictureSha256) };
  const options = { timeoutMs: CHECK_LIMIT_MS, ...(signal && { signal }) };
  const facts = await runInWorker<CheckPictureRequest, ArtFacts>('check-picture', request, options);
  await write((tx) => keepCheck(tx, pictureSha256, facts, new Date()));
  return facts;
}
