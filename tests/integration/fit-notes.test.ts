import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { umFromInches } from '@/lib/domain/measure/length';
import { reader } from '@/lib/server/db/database';
import { newId } from '@/lib/server/db/new-id';
import { editDraft } from '@/lib/server/drafts/drafts';
import { lastFitNotes } from '@/lib/server/revisions/last-fit-notes';
import { loadProof } from '@/lib/server/revisions/load-proof';
import { sealedRevision } from '@/lib/server/revisions/sealed-files';
import { sendRevision } from '@/lib/server/revisions/send-revision';
import { type FreshDatabase, freshDatabase } from './database';
import { addShop, customerOf, laidOutJob, sendNow, someMaker } from './job-fixture';

let fresh: FreshDatabase;
const maker = someMaker();
const WHY = 'The stripe runs from sleeve to sleeve on purpose.';

beforeAll(async () => {
  fresh = await freshDatabase();
  await addShop(maker);
});
afterAll(() => fresh.remove());

/** Every size group at one width: 22 in runs over both armholes of a youth M, whose chest is narrower than that. */
function atWidth(inches: number): (layout: LayoutDocument) => LayoutDocument {
  return (layout) => ({
    ...layout,
    prints: layout.prints.map((print) => ({
      ...print,
      sizeGroups: print.sizeGroups.map((group) => ({ ...group, widthUm: umFromInches(inches) })),
    })),
  });
}

async function tooWide(): Promise<{ jobId: string; printId: string }> {
  // Not soft at that width.
  const { jobId } = await laidOutJob(maker, { width: 4_400, height: 600 });
  await editDraft(maker, jobId, atWidth(22));
  return { jobId, printId: await printOf(jobId) };
}

async function printOf(jobId: string): Promise<string> {
  const draft = await reader().draft.findUniqueOrThrow({ where: { jobId } });
  return (JSON.parse(draft.json) as LayoutDocument).prints[0]?.printId ?? '';
}

async function sealedPrints(revisionId: string) {
  return (await sealedRevision(revisionId))?.envelope.layout.prints.map(({ fitNote }) => fitNote);
}

describe('a print that crosses a seam', () => {
  it('is not sent without a word why, and nothing is written', async () => {
    const { jobId, printId } = await tooWide();
    for (const notes of [{}, { [printId]: ' \n ' }]) {
      const refused = { ok: false, reason: 'fitNotesWrong', fitNotes: { [printId]: 'required' } };
      expect(await sendNow(maker, jobId, newId(), notes)).toEqual(refused);
    }
    expect(await sendNow(maker, jobId, newId(), { [printId]: 'x'.repeat(401) })).toEqual({
      ok: false,
      reason: 'fitNotesWrong',
      fitNotes: { [printId]: 'tooLong' },
    });
    expect(await reader().revision.count({ where: { jobId } })).toBe(0);
    expect(await reader().outbox.count({ where: { jobId } })).toBe(0);
  });

  it('is sent with it: it is sealed, and the customer reads it where the print stops', async () => {
    const { jobId, printId } = await tooWide();
    const sent = await sendNow(maker, jobId, newId(), { [printId]: ` ${WHY}\n`, another: 'never asked for' });
    if (!sent.ok) throw new Error(sent.reason);
    expect(await sealedPrints(sent.revisionId)).toEqual([WHY]);
    const proof = await loadProof(await customerOf(jobId));
    const prints = proof?.garments.flatMap(({ sizes }) =>
      sizes.map(({ label, sides }) => [label, sides[0]?.prints[0]]),
    );
    expect(prints).toHaveLength(2);
    for (const [, print] of prints ?? []) {
      expect(print).toMatchObject({ printId, fitNote: WHY, fit: { nearest: { um: 0 } } });
      expect((print as { fit: { stops: { kind: string }[] } }).fit.stops.map(({ kind }) => kind)).toContain(
        'widerThanArmholes',
      );
    }
    expect(await lastFitNotes(maker, jobId)).toEqual({ [printId]: WHY });
  });

  it('is asked about again when it was made so while the maker looked at it as it was', async () => {
    const { jobId } = await laidOutJob(maker);
    const { version } = await reader().draft.findUniqueOrThrow({ where: { jobId } });
    await editDraft(maker, jobId, atWidth(22));
    const input = { draftVersion: version, note: '', revisionId: newId() };
    expect(await sendRevision(maker, jobId, input)).toEqual({ ok: false, reason: 'changedElsewhere' });
  });
});

describe('a print that fits', () => {
  it('keeps no note, whatever was written while it did not', async () => {
    const { jobId, printId } = await tooWide();
    expect((await sendNow(maker, jobId, newId(), { [printId]: WHY })).ok).toBe(true);
    await editDraft(maker, jobId, (layout) => {
      const narrow = atWidth(7)(layout);
      return { ...narrow, prints: narrow.prints.map((print) => ({ ...print, fitNote: WHY })) };
    });
    const sent = await sendNow(maker, jobId, newId(), { [printId]: WHY });
    if (!sent.ok) throw new Error(sent.reason);
    expect(await sealedPrints(sent.revisionId)).toEqual([undefined]);
    const print = (await loadProof(await customerOf(jobId)))?.garments[0]?.sizes[0]?.sides[0]?.prints[0];
    expect(print).not.toHaveProperty('fitNote');
    expect(print?.fit?.stops).toEqual([]);
    expect(print?.fit?.nearest?.um).toBeGreaterThan(umFromInches(1));
  });
});
