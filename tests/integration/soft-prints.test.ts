import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { umFromInches } from '@/lib/domain/measure/length';
import { EVERY_TICK, TICKS } from '@/lib/domain/revision/answer';
import { answerByLink } from '@/lib/server/answers/answers';
import { reader } from '@/lib/server/db/database';
import { newId } from '@/lib/server/db/new-id';
import { editDraft } from '@/lib/server/drafts/drafts';
import { loadProof } from '@/lib/server/revisions/load-proof';
import { sealedRevision } from '@/lib/server/revisions/sealed-files';
import { type FreshDatabase, freshDatabase } from './database';
import { addShop, customerOf, laidOutJob, sendNow, someMaker } from './job-fixture';

let fresh: FreshDatabase;
const maker = someMaker();

beforeAll(async () => {
  fresh = await freshDatabase();
  await addShop(maker);
});
afterAll(() => fresh.remove());

type Print = LayoutDocument['prints'][number];

function everyPrint(jobId: string, change: (print: Print) => Print) {
  return editDraft(maker, jobId, (layout) => ({ ...layout, prints: layout.prints.map(change) }));
}

function atWidth(inches: number): (print: Print) => Print {
  const widthUm = umFromInches(inches);
  return (print) => ({ ...print, sizeGroups: print.sizeGroups.map((group) => ({ ...group, widthUm })) });
}

async function sealedMarks(revisionId: string) {
  return (await sealedRevision(revisionId))?.envelope.layout.prints.map((print) => 'goAheadSoft' in print);
}

describe('a print that comes out soft', () => {
  // Common practice, no source: soft under 200 px to a printed inch. 1000 px are 200 at 5 in.
  it('is not sent before it is made smaller or gone ahead with', async () => {
    const { jobId } = await laidOutJob(maker, { width: 1_000, height: 800 });
    await everyPrint(jobId, atWidth(5.125));
    expect(await sendNow(maker, jobId)).toEqual({ ok: false, reason: 'softPrints' });
    expect(await reader().revision.count({ where: { jobId } })).toBe(0);
    await everyPrint(jobId, atWidth(5));
    const sent = await sendNow(maker, jobId);
    if (!sent.ok) throw new Error(sent.reason);
    expect(await sealedMarks(sent.revisionId)).toEqual([false]);
  });

  it('is sent when gone ahead with, and said yes to only with a tick of its own', async () => {
    const { jobId } = await laidOutJob(maker, { width: 1_000, height: 800 });
    await everyPrint(jobId, (print) => ({ ...atWidth(8)(print), goAheadSoft: true }));
    const sent = await sendNow(maker, jobId);
    if (!sent.ok) throw new Error(sent.reason);
    expect(await sealedMarks(sent.revisionId)).toEqual([true]);
    const customer = await customerOf(jobId);
    const shown = (await loadProof(customer))?.garments.flatMap(({ sizes }) =>
      sizes.flatMap(({ sides }) => sides.flatMap(({ prints }) => prints.map(({ goAheadSoft }) => goAheadSoft))),
    );
    expect(new Set(shown)).toEqual(new Set([true]));

    const yes = { revisionId: sent.revisionId, word: 'yes' as const, typedName: 'Wren Okafor', words: '' };
    const answer = (ticks: typeof EVERY_TICK | typeof TICKS) =>
      answerByLink(customer, { ...yes, ticks: [...ticks], idempotencyKey: newId(), clientAddress: '' });
    expect(await answer(TICKS)).toMatchObject({ ok: false, reason: 'ticksMissing' });
    expect(await answer(EVERY_TICK)).toEqual({ ok: true });
    const kept = await reader().answer.findFirstOrThrow({ where: { revisionId: sent.revisionId } });
    expect(JSON.parse(kept.ticksJson)).toEqual(EVERY_TICK);
  });

  it('seals no mark on a print that is not soft, and asks for no fifth tick then', async () => {
    const { jobId } = await laidOutJob(maker, { width: 1_000, height: 800 });
    await everyPrint(jobId, (print) => ({ ...atWidth(4)(print), goAheadSoft: true }));
    const sent = await sendNow(maker, jobId);
    if (!sent.ok) throw new Error(sent.reason);
    expect(await sealedMarks(sent.revisionId)).toEqual([false]);
  });
});
