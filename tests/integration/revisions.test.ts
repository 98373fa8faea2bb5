import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sidesOf } from '@/lib/domain/garment/kinds';
import { TICKS } from '@/lib/domain/revision/answer';
import { canonicalBytes, type JsonValue, sha256Hex } from '@/lib/domain/revision/canonical';
import { readEnvelope } from '@/lib/domain/revision/envelope';
import { answerByLink, recordAnswer } from '@/lib/server/answers/answers';
import { noteOpened } from '@/lib/server/answers/note-opened';
import { reopenJob } from '@/lib/server/answers/reopen-job';
import { reader, write } from '@/lib/server/db/database';
import { newId } from '@/lib/server/db/new-id';
import { isKeptRowRefusal } from '@/lib/server/db/refusals';
import { editDraft, saveDraft } from '@/lib/server/drafts/drafts';
import { listJobs, loadJob } from '@/lib/server/jobs/load-jobs';
import type { LinkAccess } from '@/lib/server/links/link-access';
import { verifyRecord } from '@/lib/server/record/verify';
import { loadProof } from '@/lib/server/revisions/load-proof';
import { loadRevision } from '@/lib/server/revisions/load-revision';
import { sealedRevision, sealedScene } from '@/lib/server/revisions/sealed-files';
import { type FreshDatabase, freshDatabase } from './database';
import { addShop, customerOf, laidOutJob, sendNow, someMaker, widen } from './job-fixture';

let fresh: FreshDatabase;
const maker = someMaker();

beforeAll(async () => {
  fresh = await freshDatabase();
  await addShop(maker);
});
afterAll(() => fresh.remove());

function yes(revisionId: string, idempotencyKey: string = newId()) {
  const said = { word: 'yes' as const, ticks: [...TICKS], typedName: 'Wren Okafor', words: '' };
  return { ...said, revisionId, idempotencyKey, clientAddress: '192.0.2.7' };
}

function change(revisionId: string, words = 'a touch bigger') {
  return { ...yes(revisionId), word: 'change' as const, ticks: [], words };
}

async function sentJob(): Promise<{ jobId: string; revisionId: string; customer: LinkAccess }> {
  const { jobId } = await laidOutJob(maker);
  const sent = await sendNow(maker, jobId);
  if (!sent.ok) throw new Error(`not sent: ${sent.reason}`);
  return { jobId, revisionId: sent.revisionId, customer: await customerOf(jobId) };
}

async function signedOffJob() {
  const job = await sentJob();
  expect(await answerByLink(job.customer, yes(job.revisionId))).toEqual({ ok: true });
  return job;
}

describe('sending a revision', () => {
  it('seals bytes whose sha256sum is the seal, and keeps every drawing they name', async () => {
    const { revisionId } = await sentJob();
    const sealed = await sealedRevision(revisionId);
    const file = join(fresh.folder, 'envelope.json');
    writeFileSync(file, sealed?.bytes ?? '');
    // Another tool than ours: coreutils.
    expect(execFileSync('sha256sum', [file], { encoding: 'utf8' }).slice(0, 64)).toBe(sealed?.seal);
    const envelope = sealed?.envelope;
    expect(envelope?.scenes.length).toBe(4);
    for (const { sha256 } of envelope?.scenes ?? []) {
      const scene = await sealedScene(revisionId, sha256);
      expect(sha256Hex(canonicalBytes(scene as unknown as JsonValue))).toBe(sha256);
    }
  });

  it('freezes the flats of every size offered into what is sealed', async () => {
    const { revisionId } = await sentJob();
    const envelope = readEnvelope((await sealedRevision(revisionId))?.bytes ?? new Uint8Array());
    const sizes = envelope.layout.garments.flatMap(({ blanks }) => blanks.flatMap((blank) => blank.sizes));
    expect(sizes.length).toBe(13);
    expect(sizes.every(({ flats }) => flats?.map(({ side }) => side).join() === sidesOf('crewTee').join())).toBe(true);
  });

  it('chains each revision to the one before it', async () => {
    const { jobId, revisionId } = await sentJob();
    await widen(maker, jobId);
    const second = await sendNow(maker, jobId);
    if (!second.ok) throw new Error(second.reason);
    const [one, two] = await Promise.all([sealedRevision(revisionId), sealedRevision(second.revisionId)]);
    expect(two?.envelope.previousSeal).toBe(one?.seal);
    expect(two?.envelope.number).toBe(2);
  });

  it('sends once when the same form is sent twice at once', async () => {
    const { jobId } = await laidOutJob(maker);
    const revisionId = newId();
    const results = await Promise.all([sendNow(maker, jobId, revisionId), sendNow(maker, jobId, revisionId)]);
    expect(results).toEqual([
      { ok: true, number: 1, revisionId },
      { ok: true, number: 1, revisionId },
    ]);
    expect(await reader().revision.count({ where: { jobId } })).toBe(1);
  });

  it('lets one of two senders win and tells the other', async () => {
    const { jobId } = await laidOutJob(maker);
    const results = await Promise.all([sendNow(maker, jobId), sendNow(maker, jobId)]);
    expect(results.map(({ ok }) => ok).sort()).toEqual([false, true]);
    expect(results.find(({ ok }) => !ok)).toEqual({ ok: false, reason: 'changedElsewhere' });
  });

  it('refuses a layout with nothing printed, and one with nothing ordered', async () => {
    const { jobId } = await laidOutJob(maker);
    await editDraft(maker, jobId, (layout) => ({
      ...layout,
      garments: layout.garments.map((each) => ({ ...each, counts: [] })),
    }));
    expect(await sendNow(maker, jobId)).toEqual({ ok: false, reason: 'noCounts' });
    await editDraft(maker, jobId, (layout) => ({ ...layout, prints: [] }));
    expect(await sendNow(maker, jobId)).toEqual({ ok: false, reason: 'noPrint' });
  });

  it('refuses to send again what the customer is already looking at', async () => {
    const { jobId } = await sentJob();
    expect(await sendNow(maker, jobId)).toEqual({ ok: false, reason: 'unchanged' });
  });

  it('keeps a sent revision from being changed or removed in the database', async () => {
    const { revisionId } = await sentJob();
    const changed = write((tx) => tx.revision.update({ where: { id: revisionId }, data: { number: 9 } }));
    await expect(changed).rejects.toSatisfy(isKeptRowRefusal);
    const removed = write((tx) => tx.revisionScene.deleteMany({ where: { revisionId } }));
    await expect(removed).rejects.toSatisfy(isKeptRowRefusal);
  });
});

describe('answering', () => {
  it('signs off with a yes and locks the layout on the server', async () => {
    const { jobId } = await signedOffJob();
    const job = await loadJob(maker, jobId);
    expect(job?.step).toEqual({ step: 'press', turn: 'maker', number: 1 });
    expect(job?.locked).toBe(true);
    const layout = job?.draft.layout;
    expect(await saveDraft(maker, jobId, job?.draft.version ?? 0, layout)).toEqual({ ok: false, reason: 'locked' });
    expect(await widen(maker, jobId)).toEqual({ ok: false, reason: 'locked' });
    expect(await sendNow(maker, jobId)).toEqual({ ok: false, reason: 'locked' });
  });

  it('counts an answer once however often its form is sent', async () => {
    const { revisionId, customer } = await sentJob();
    const form = yes(revisionId);
    const results = await Promise.all([1, 2, 3].map(() => answerByLink(customer, form)));
    expect(results).toEqual([{ ok: true }, { ok: true }, { ok: true }]);
    expect(await reader().answer.count({ where: { revisionId } })).toBe(1);
  });

  it('refuses an answer to a revision that a newer one replaced, and says which is current', async () => {
    const { jobId, revisionId, customer } = await sentJob();
    await widen(maker, jobId);
    await sendNow(maker, jobId);
    expect(await answerByLink(customer, yes(revisionId))).toEqual({ ok: false, reason: 'replaced', currentNumber: 2 });
    expect(await reader().answer.count({ where: { revisionId } })).toBe(0);
  });

  it('has exactly one outcome when a yes and a newer revision come at once', async () => {
    for (let round = 0; round < 5; round += 1) {
      const { jobId, revisionId, customer } = await sentJob();
      await widen(maker, jobId);
      const [answered, sent] = await Promise.all([answerByLink(customer, yes(revisionId)), sendNow(maker, jobId)]);
      const job = await loadJob(maker, jobId);
      expect(sent.ok).toBe(true);
      if (answered.ok) expect(job?.revisions.find(({ number }) => number === 1)?.answers.length).toBe(1);
      else expect(answered).toEqual({ ok: false, reason: 'replaced', currentNumber: 2 });
      expect(job?.revisions[0]?.standing).toBe('unanswered');
    }
  });

  it('shows a change to the maker in the customer’s words and lets the layout be edited', async () => {
    const { jobId, revisionId, customer } = await sentJob();
    await answerByLink(customer, change(revisionId));
    const row = (await listJobs(maker)).find((each) => each.jobId === jobId);
    expect(row?.step).toEqual({ step: 'changeAsked', turn: 'maker', number: 1, words: 'a touch bigger' });
    expect((await widen(maker, jobId)).ok).toBe(true);
  });

  it('refuses another answer after the sign-off', async () => {
    const { revisionId, customer } = await signedOffJob();
    expect(await answerByLink(customer, change(revisionId))).toEqual({
      ok: false,
      reason: 'alreadySignedOff',
      currentNumber: 1,
    });
  });

  it('records a yes given by phone as the maker’s record of it', async () => {
    const { jobId, customer } = await sentJob();
    const recorded = await recordAnswer(maker, jobId, {
      number: 1,
      contactId: customer.contactId,
      word: 'yes',
      how: 'phone',
      typedName: 'Wren Okafor',
      words: '',
      idempotencyKey: newId(),
      saidAt: new Date('2026-10-01T15:00:00Z'),
    });
    expect(recorded).toEqual({ ok: true });
    const revision = await loadRevision(maker, jobId, 1);
    expect(revision?.standing).toBe('signedOff');
    expect(revision?.answers).toMatchObject([{ word: 'yes', how: 'phone', typedName: 'Wren Okafor' }]);
  });

  it('keeps somebody of another job from answering', async () => {
    const [one, other] = [await sentJob(), await sentJob()];
    expect(await answerByLink(other.customer, yes(one.revisionId))).toEqual({
      ok: false,
      reason: 'noRevision',
      currentNumber: 1,
    });
  });
});

describe('after the sign-off', () => {
  it('opens for changes only with a reason, and then lets a second revision be sent', async () => {
    const { jobId } = await signedOffJob();
    expect(await reopenJob(maker, jobId, '  ')).toEqual({ ok: false, reason: 'reasonMissing' });
    expect(await reopenJob(maker, jobId, 'One more shirt')).toEqual({ ok: true });
    expect(await reopenJob(maker, jobId, 'Again')).toEqual({ ok: false, reason: 'notSignedOff' });
    expect((await widen(maker, jobId)).ok).toBe(true);
    expect(await sendNow(maker, jobId)).toMatchObject({ ok: true, number: 2 });
    const job = await loadJob(maker, jobId);
    expect(job?.revisions.map(({ number, state, standing }) => [number, state, standing])).toEqual([
      [2, 'current', 'unanswered'],
      [1, 'replaced', 'signedOff'],
    ]);
  });

  it('keeps a record that verifies', async () => {
    const { jobId } = await signedOffJob();
    expect(await verifyRecord(jobId)).toMatchObject({ ok: true });
  });
});

describe('the customer’s page', () => {
  it('shows the current revision with what the tape reads on each size ordered', async () => {
    const { customer } = await sentJob();
    const proof = await loadProof(customer);
    expect(proof?.revision).toMatchObject({ number: 1, state: 'current', unit: 'in', note: 'Please look it over.' });
    expect(proof?.garments[0]?.sizes.map(({ ageBand, label, quantity }) => [ageBand, label, quantity])).toEqual([
      ['youth', 'M', 6],
      ['adult', 'M', 6],
    ]);
    const adultFront = proof?.garments[0]?.sizes[1]?.sides[0];
    // Common practice, no source: a full front starts 10 in wide, four fingers (3 in) below the collar, centred.
    expect(adultFront?.prints[0]?.reading).toMatchObject({
      widthUm: 254_000,
      dropUm: 76_200,
      across: { towards: 'centre' },
    });
  });

  it('says when the one asked for was replaced', async () => {
    const { jobId, customer } = await sentJob();
    await widen(maker, jobId);
    await sendNow(maker, jobId);
    expect((await loadProof(customer))?.revision.number).toBe(2);
    expect(await loadProof(customer, 1)).toMatchObject({
      mayAnswer: false,
      revision: { state: 'replaced', currentNumber: 2 },
    });
    expect(await loadProof(customer, 9)).toBeNull();
  });

  it('lets the bench know that it was opened', async () => {
    const { jobId, revisionId, customer } = await sentJob();
    await noteOpened(customer, revisionId);
    await noteOpened(customer, revisionId);
    expect((await loadJob(maker, jobId))?.step).toEqual({ step: 'waiting', turn: 'customer', number: 1, opened: true });
    expect(await reader().visit.count({ where: { revisionId } })).toBe(1);
  });
});

describe('the working copy', () => {
  it('is not silently overwritten by a second window', async () => {
    const { jobId } = await laidOutJob(maker);
    const job = await loadJob(maker, jobId);
    const base = job?.draft.version ?? 0;
    const mine = { ...job?.draft.layout, notes: 'mine' };
    const theirs = { ...job?.draft.layout, notes: 'theirs' };
    expect(await saveDraft(maker, jobId, base, theirs)).toEqual({ ok: true, version: base + 1 });
    expect(await saveDraft(maker, jobId, base, mine)).toMatchObject({
      ok: false,
      reason: 'changedElsewhere',
      layout: { notes: 'theirs' },
    });
  });

  it('refuses a layout that does not hold together, and one with somebody else’s art', async () => {
    const [one, other] = [await laidOutJob(maker), await laidOutJob(maker)];
    const job = await loadJob(maker, one.jobId);
    const layout = job?.draft.layout;
    const [print] = layout?.prints ?? [];
    if (!(layout && print)) throw new Error('no print');
    const foreign = { ...layout, prints: [{ ...print, content: { kind: 'art', art: other.art.ref } }] };
    expect(await saveDraft(maker, one.jobId, job.draft.version, foreign)).toEqual({ ok: false, reason: 'invalid' });
    const torn = { ...layout, prints: [{ ...print, sizeGroups: print.sizeGroups.slice(1) }] };
    expect(await saveDraft(maker, one.jobId, job.draft.version, torn)).toEqual({ ok: false, reason: 'invalid' });
    expect(await saveDraft(maker, one.jobId, job.draft.version, { format: 1 })).toEqual({
      ok: false,
      reason: 'invalid',
    });
  });
});
