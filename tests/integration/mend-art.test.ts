import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import sharp from 'sharp';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { MendStep, Recipe } from '@/lib/domain/art/mend/recipe';
import { ensureChecked } from '@/lib/server/art/art-checks';
import { type ArtView, listArt } from '@/lib/server/art/list-art';
import { type MadeMend, makeMend } from '@/lib/server/art/mend-art';
import { lookAtPart, previewMend } from '@/lib/server/art/preview-mend';
import { receiveArt } from '@/lib/server/art/receive-art';
import { suggestedRecipe } from '@/lib/server/art/suggest-mend';
import { useArtInstead } from '@/lib/server/art/use-art-instead';
import { reader, write } from '@/lib/server/db/database';
import { readFile } from '@/lib/server/files/store';
import { loadJob } from '@/lib/server/jobs/load-jobs';
import { addJob, type FreshDatabase, freshDatabase } from './database';
import { addShop, laidOutJob, someMaker } from './job-fixture';

let fresh: FreshDatabase;
let jobId: string;
const maker = someMaker();

beforeAll(async () => {
  fresh = await freshDatabase();
  await addShop(maker);
});
afterAll(() => fresh.remove());
beforeEach(async () => {
  jobId = await write((tx) => addJob(tx, new Date()));
});

const recipe = (...steps: MendStep[]): Recipe => ({ format: 1, steps });

/** A dark disc on white with a white hole in it, 300 × 200 px, and a grey bar along the top as of a screenshot. */
const badge = Buffer.from(
  '<svg xmlns="http://www.w3.org/2000/svg" width="300" height="200"><rect width="300" height="200" fill="#fff"/>' +
    '<rect width="300" height="20" fill="#ccc"/><circle cx="150" cy="110" r="70" fill="#203864"/>' +
    '<circle cx="150" cy="110" r="30" fill="#fff"/></svg>',
);

async function received(bytes: Buffer): Promise<ArtView> {
  const upload = { jobId, name: 'badge.png', declaredLength: bytes.length, body: Readable.from([bytes]) };
  const result = await receiveArt(upload);
  if (!result.ok) throw new Error(result.reason);
  return result.art;
}

const badgeArt = async () => received(await sharp(badge).png().toBuffer());

function made(mend: MadeMend): Extract<MadeMend, { ok: true }> {
  if (!mend.ok) throw new Error(mend.reason);
  return mend;
}

async function pixelsOf(bytes: Uint8Array) {
  const { data, info } = await sharp(bytes).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return {
    widthPx: info.width,
    heightPx: info.height,
    at: (x: number, y: number) => [...data.subarray((y * info.width + x) * 4, (y * info.width + x) * 4 + 4)],
  };
}

describe('mending art', () => {
  const mended = recipe(
    { mend: 'erase', boxes: [{ x: 0, y: 0, width: 300, height: 20 }] },
    { mend: 'knockOut', hex: '#FFFFFF', tolerance: 5, fromEdges: true, enclosed: [{ x: 150, y: 110 }] },
    { mend: 'trim' },
  );

  it('shows what a recipe would make, keeps it when asked, and leaves the original as it was', async () => {
    const art = await badgeArt();
    const original = await readFile(art.ref.sha256);
    const preview = await previewMend(maker, art.artId, mended);
    expect(preview).toMatchObject({ ok: true, widthPx: 140, heightPx: 140, changed: true });
    expect(await listArt(jobId)).toHaveLength(1);

    const { art: kept, alreadyThere } = made(await makeMend(maker, art.artId, mended));
    expect(alreadyThere).toBe(false);
    expect(kept).toMatchObject({ name: 'badge.png', parentId: art.artId, recipe: mended, redrawn: false, notes: [] });
    expect(kept.ref).toMatchObject({ widthPx: 140, heightPx: 140, inkBox: { x: 0, y: 0, width: 140, height: 140 } });
    expect(kept.facts?.backing).toBeNull();
    const picture = await pixelsOf(await readFile(kept.ref.sha256));
    expect(picture.at(70, 70)).toEqual([0, 0, 0, 0]);
    expect(picture.at(10, 70)).toEqual([0x20, 0x38, 0x64, 255]);
    expect(Buffer.from(await readFile(art.ref.sha256)).equals(original)).toBe(true);
    if (preview.ok) expect(await pixelsOf(preview.webp)).toMatchObject({ widthPx: 140, heightPx: 140 });
  });

  it('gives the same file when a recipe is done again, and keeps it once', async () => {
    const art = await badgeArt();
    const first = made(await makeMend(maker, art.artId, mended));
    for (const name of readdirSync(join(fresh.folder, 'files', 'mends'))) {
      const { rmSync } = await import('node:fs');
      rmSync(join(fresh.folder, 'files', 'mends', name));
    }
    const again = made(await makeMend(maker, art.artId, mended));
    expect(again).toMatchObject({ alreadyThere: true, art: { artId: first.art.artId, ref: first.art.ref } });
    expect(await reader().art.count({ where: { jobId } })).toBe(2);
  });

  it('remembers every step from the upload when a mended picture is mended, to the same pixels', async () => {
    const art = await badgeArt();
    const [first, ...rest] = mended.steps;
    if (!first) throw new Error('no step');
    const erased = made(await makeMend(maker, art.artId, recipe(first)));
    const inTwo = made(await makeMend(maker, erased.art.artId, recipe(...rest)));
    expect(inTwo.art).toMatchObject({ parentId: art.artId, recipe: mended });
    const inOne = made(await makeMend(maker, art.artId, mended));
    expect(inOne).toMatchObject({ alreadyThere: true, art: { artId: inTwo.art.artId } });
  });

  it('says what cannot be done, at which step, and keeps nothing of it', async () => {
    const art = await badgeArt();
    const everything = { x: 0, y: 0, width: 300, height: 200 };
    const erase = recipe({ mend: 'turn', quarters: 2 }, { mend: 'erase', boxes: [everything] });
    expect(await makeMend(maker, art.artId, erase)).toEqual({ ok: false, reason: 'nothingLeft', step: 1 });
    expect(await previewMend(maker, art.artId, recipe({ mend: 'thicken', byPx: 2 }))).toMatchObject({
      reason: 'manyColours',
    });
    expect(await makeMend(maker, art.artId, { format: 1, steps: [{ mend: 'polish' }] })).toMatchObject({
      reason: 'badRecipe',
    });
    expect(await makeMend(maker, art.artId, recipe({ mend: 'crop', box: everything }))).toMatchObject({
      reason: 'changesNothing',
    });
    expect(await makeMend(maker, 'no-such-art', mended)).toMatchObject({ reason: 'noArt' });
    const stopped = { signal: AbortSignal.abort() };
    expect(await previewMend(maker, art.artId, recipe({ mend: 'turn', quarters: 3 }), stopped)).toMatchObject({
      reason: 'stopped',
    });
    expect(await listArt(jobId)).toHaveLength(1);
    expect(readdirSync(join(fresh.folder, 'files', 'mends')).filter((name) => name.includes('.part'))).toEqual([]);
  });

  it('shows a part of the picture and of what it becomes pixel for pixel', async () => {
    const art = await badgeArt();
    const box = { x: 140, y: 50, width: 4_000, height: 3 };
    const before = await lookAtPart(maker, art.artId, { recipe: null, box });
    const after = await lookAtPart(maker, art.artId, { recipe: recipe({ mend: 'recolour', hex: '#FFCC00' }), box });
    if (!before.ok || !after.ok) throw new Error('no part');
    const [one, other] = [await pixelsOf(before.webp), await pixelsOf(after.webp)];
    expect(one).toMatchObject({ widthPx: 160, heightPx: 3 });
    expect(one.at(2, 1)).toEqual([0x20, 0x38, 0x64, 255]);
    expect(other.at(2, 1)).toEqual([0xff, 0xcc, 0, 255]);
    const beside = { recipe: null, box: { x: 300, y: 0, width: 10, height: 10 } };
    expect(await lookAtPart(maker, art.artId, beside)).toEqual({ ok: false, reason: 'besidePicture' });
  });

  it('gives the prints that carry a picture its mend, with their readings', async () => {
    const laidOut = await laidOutJob(maker);
    const box = { x: 0, y: 0, width: 900, height: 600 };
    const { art } = made(await makeMend(maker, laidOut.art.artId, recipe({ mend: 'crop', box })));
    const before = (await loadJob(maker, laidOut.jobId))?.draft.layout.prints ?? [];
    expect(await useArtInstead(maker, laidOut.jobId, laidOut.art.artId, art.artId)).toMatchObject({
      ok: true,
      prints: 1,
    });
    const after = (await loadJob(maker, laidOut.jobId))?.draft.layout.prints ?? [];
    expect(after.map(({ content }) => content)).toEqual([{ kind: 'art', art: art.ref }]);
    expect(after.map(({ sizeGroups }) => sizeGroups)).toEqual(before.map(({ sizeGroups }) => sizeGroups));
    expect(await useArtInstead(maker, jobId, laidOut.art.artId, art.artId)).toEqual({ ok: false, reason: 'noArt' });
  });

  it('suggests settings that can be used as they are, and a redrawing that is marked as one', async () => {
    const art = await badgeArt();
    const knockOut = await suggestedRecipe(maker, art.artId, 'knockOut');
    expect(await suggestedRecipe(maker, art.artId, 'dots')).toEqual({ ok: false, reason: 'nothingToMend' });
    const redraw = await suggestedRecipe(maker, art.artId, 'redraw');
    if (!redraw.ok || redraw.step.mend !== 'redraw') throw new Error('no redrawing suggested');
    expect(redraw.step).toMatchObject({ colours: ['#FFFFFF', '#203864', '#CCCCCC'], scale: 8 });
    if (knockOut.ok) expect(await previewMend(maker, art.artId, recipe(knockOut.step))).toMatchObject({ ok: true });
    const { art: redrawn } = made(await makeMend(maker, art.artId, recipe({ ...redraw.step, scale: 2 })));
    expect(redrawn).toMatchObject({ redrawn: true, ref: { widthPx: 600, heightPx: 400 } });
    expect(art.redrawn).toBe(false);
    const large = recipe({ ...redraw.step, scale: 8 }, { ...redraw.step, scale: 8 });
    expect(await previewMend(maker, art.artId, large)).toMatchObject({ reason: 'tooManyPixels', step: 1 });
  });

  it('measures a picture when asked that was taken in before there was a check', async () => {
    const art = await badgeArt();
    await write((tx) => tx.artCheck.deleteMany({ where: { pictureSha256: art.ref.sha256 } }));
    expect((await listArt(jobId))[0]?.facts).toBeNull();
    const facts = await ensureChecked(art.ref.sha256);
    expect(facts).toMatchObject({ widthPx: 300, heightPx: 200 });
    expect((await listArt(jobId))[0]?.facts).toEqual(facts);
    expect(await ensureChecked('0'.repeat(64))).toBeNull();
  });
});
