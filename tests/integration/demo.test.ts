import { afterAll, beforeAll, expect, it } from 'vitest';
import { reader } from '@/lib/server/db/database';
import { loadDemo } from '@/lib/server/demo/seed-demo';
import { listJobs } from '@/lib/server/jobs/load-jobs';
import { startPictureWork } from '@/lib/server/revisions/picture-work';
import { pictureOf } from '@/lib/server/revisions/pictures';
import { pictureToSend, printFile, sealedFile } from '@/lib/server/revisions/revision-files';
import { sealedRevision } from '@/lib/server/revisions/sealed-files';
import { type FreshDatabase, freshDatabase } from './database';
import { someMaker } from './job-fixture';
import { pngDensity } from './png-density';

let fresh: FreshDatabase;

beforeAll(async () => {
  fresh = await freshDatabase();
  expect(await loadDemo()).toEqual({ loaded: true });
}, 120_000);
afterAll(() => fresh.remove());

it('puts one job that waits and one that is signed off on the bench, and only once', async () => {
  const jobs = await listJobs(someMaker());
  expect(jobs.map(({ title, step }) => [title, step.step])).toEqual([
    ['Coxes’ practice tees', 'press'],
    ['Autumn relay shirts', 'waiting'],
  ]);
  expect(await loadDemo()).toEqual({ loaded: false });
});

it('leaves nothing in the outbox that could be sent', async () => {
  expect(await reader().outbox.count({ where: { state: 'waiting' } })).toBe(0);
});

it('has every picture of its revisions made beside the pages, one revision after the other', async () => {
  const stop = startPictureWork();
  await expect
    .poll(() => reader().revisionPicture.count(), { timeout: 60_000 })
    .toBe(await reader().revisionScene.count());
  await stop();
  const [scenes, pictures] = await Promise.all([reader().revisionScene.count(), reader().revisionPicture.count()]);
  expect(pictures).toBe(scenes);
}, 90_000);

it('gives the whole revision as one picture, the sealed bytes and a print file at 300 dpi', async () => {
  const revision = await reader().revision.findFirstOrThrow({ where: { number: 2 } });
  const envelope = (await sealedRevision(revision.id))?.envelope;
  const [print] = envelope?.layout.prints ?? [];
  const group = print?.sizeGroups.find(({ members }) => members.some(({ sizeId }) => sizeId === '2XL'));
  if (!(print && group)) throw new Error('the demo has no print for 2XL');
  const [picture, sealed, file] = await Promise.all([
    pictureToSend(revision.id),
    sealedFile(revision.id),
    printFile(revision.id, print.printId, group.groupId),
  ]);
  expect(picture?.fileName).toBe('Autumn relay shirts Rev 2.png');
  expect(sealed?.bytes).toEqual(revision.envelope);
  // PNG Third Edition, 11.3.4.3: 300 dpi is 11 811 px per metre.
  expect(pngDensity(file?.png ?? new Uint8Array())).toEqual({ x: 11_811, y: 11_811, unit: 1 });
  expect(file?.widthPx).toBe(Math.ceil((group.widthUm / 25_400) * 300 - 1e-3));
});

it('gives a picture as WebP, and none for a drawing of another revision', async () => {
  const scene = await reader().revisionScene.findFirstOrThrow({ orderBy: { id: 'asc' } });
  const other = await reader().revision.findFirstOrThrow({
    where: { NOT: { jobId: (await reader().revision.findUniqueOrThrow({ where: { id: scene.revisionId } })).jobId } },
  });
  const webp = await pictureOf(scene.revisionId, scene.hash);
  expect(Buffer.from(webp ?? []).toString('latin1', 8, 12)).toBe('WEBP');
  expect(await pictureOf(other.id, scene.hash)).toBeNull();
});
