import { z } from 'zod';
import type { MakerAccess } from '../auth/maker-access';
import { reader } from '../db/database';

/** What the bench tells of an entry's payload, where the entry has it and it was not erased. */
const toldSchema = z.object({
  number: z.number().optional(),
  revision: z.number().optional(),
  word: z.enum(['yes', 'change']).optional(),
  reason: z.string().optional(),
});

/** One entry of a job's record as the bench lists it. */
export type HistoryEntry = {
  readonly seq: number;
  readonly kind: string;
  readonly at: Date;
  /** The number of the revision it is about. */
  readonly number: number | null;
  readonly word: 'yes' | 'change' | null;
  readonly reason: string | null;
};

/** The record of a job, newest first. */
export async function loadHistory(_maker: MakerAccess, jobId: string): Promise<HistoryEntry[]> {
  const rows = await reader().recordEntry.findMany({
    where: { jobId },
    orderBy: { seq: 'desc' },
    include: { payload: { select: { bytes: true } } },
  });
  return rows.map(({ seq, kind, at, payload }) => {
    const told = payload ? toldSchema.parse(JSON.parse(new TextDecoder().decode(payload.bytes))) : {};
    return {
      seq,
      kind,
      at,
      number: told.number ?? told.revision ?? null,
      word: told.word ?? null,
      reason: told.reason ?? null,
    };
  });
}
