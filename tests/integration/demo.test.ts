import sharp, { type OutputInfo } from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { totalCount } from '@/lib/domain/layout/sizes';
import { sidesOnLine } from '@/lib/domain/revision/view';
import { listBlanks } from '@/lib/server/blanks/list-blanks';
import { reader } from '@/lib/server/db/database';
import { loadDemo } from '@/lib/server/demo/seed-demo';
import { listJobs, loadJob } from '@/lib/server/jobs/load-jobs';
import { startPictureWork } from '@/lib/server/revisions/picture-work';
import { pictureOf } from '@/lib/server/revisions/pictures';
import { pictureToSend, printFile, sealedFile } from '@/lib/server/revisions/revision-files';
import { revisionViewSchema } from '@/lib/server/revisions/revision-view';
import { sealedRevision, sealedScene, sealedScenesOf } from '@/lib/server/revisions/sealed-files';
import { type FreshDatabase, freshDatabase } from './database';
import { someMaker } from './job-fixture';
import { pngDensity } from './png-density';

let fresh: FreshDatabase;

beforeAll(async () => {
  fresh = await freshDatabase();
  expect(await loadDemo()).toEqual({ loaded: true });
}, 120_000);
afterAll(() => fresh.remove());

/** How wide what is painted in one place of a line is, px, below the string. */
function paintedWidthPx(rgba: Buffer, { width, height }: OutputInfo, leftPx: number, placePx: number): number {
  const painted = Array.from({ length: placePx }, (_, x) => x).filter((x) => {
    for (let y = 45; y < height; y += 1) if ((rgba[(y * width + leftPx + x) * 4 + 3] ?? 0) > 127) return true;
    return false;
  });
  return (painted.at(-1) ?? 0) - (painted[0] ?? 0) + 1;
}

it('puts one job that waits and one that is signed off on the bench, and only once', async () => {
  const jobs = await listJobs(someMaker());
  expect(jobs.map(({ title, step }) => [title, step.step])).toEqual([
    ['Coxes’ practice tees', 'press'],
    ['Autumn relay shirts', 'waiting'],
  ]);
  expect(await loadDemo()).toEqual({ loaded: false });
});

it('has the crews on the list of the job that waits, with nothing to settle, in agreement with what was ordered', async () => {
  const relay = (await listJobs(someMaker())).find(({ title }) => title === 'Autumn relay shirts');
  const job = await loadJob(someMaker(), relay?.jobId ?? '');
  expect(job?.draft.layout.people.lines).toHaveLength(18);
  expect(job?.open).toEqual({ findings: 0, stops: 0, unconfirmed: 0 });
  expect(totalCount(job?.draft.layout.garments ?? [])).toBe(19);
});

it('has blanks on the list, each with a chart, colours and some on hand', async () => {
  const blanks = await listBlanks(someMaker());
  expect(blanks.map(({ name, sizes, colours, onHand }) => [name, sizes.length, colours.length, onHand])).toEqual([
    ['Boathouse hood', 8, 2, 4],
    ['Heavy tee', 8, 2, 20],
    ['Heavy tee, youth', 5, 2, 15],
  ]);
});

it('leaves nothing in the outbox that could be sent', async () => {
  expect(await reader().outbox.count({ where: { state: 'waiting' } })).toBe(0);
});

it('has every picture of its revisions made beside the pages, one revision after the other', async () => {
  const [scenes, views] = await Promise.all([reader().revisionScene.count(), reader().revisionView.findMany()]);
  const garments = views.flatMap(({ json }) => revisionViewSchema.parse(JSON.parse(json)).garments);
  const lines = garments.reduce((sum, garment) => sum + sidesOnLine(garment).length, 0);
  expect(lines).toBeGreaterThan(garments.length);
  const stop = startPictureWork();
  await expect.poll(() => reader().revisionPicture.count(), { timeout: 120_000 }).toBe(scenes + lines);
  await stop();
}, 150_000);

it('gives the line of a garment as one picture, every size in a place of its own, at one scale', async () => {
  const { revisionId, json } = await reader().revisionView.findFirstOrThrow({ orderBy: { madeAt: 'asc' } });
  const [garment] = revisionViewSchema.parse(JSON.parse(json)).garments;
  if (!garment) throw new Error('the demo shows no garment');
  const [side] = sidesOnLine(garment);
  const line = { kind: 'line', garmentId: garment.garmentId, side: side ?? 'front' } as const;
  const webp = await pictureOf(revisionId, line);
  const shown = await sealedScenesOf(revisionId, garment.garmentId);
  const frameWidthMm = 2 * Math.max(...shown.map(({ box }) => Math.max(-box.x, box.x + box.width)));
  const { data, info } = await sharp(webp ?? undefined)
    .raw()
    .toBuffer({ resolveWithObject: true });
  const placePx = info.width / garment.sizes.length;
  for (const [at, { sides }] of garment.sizes.entries()) {
    const scene = await sealedScene(revisionId, sides.find((each) => each.side === side)?.sceneSha256 ?? '');
    // The frame of every picture is symmetrical about the middle and 24 mm wider than the widest garment on either side.
    const mmPerPx = (frameWidthMm + 48) / placePx;
    const widthPx = paintedWidthPx(data, info, at * placePx, placePx);
    expect(Math.abs(widthPx - (scene?.box.width ?? 0) / mmPerPx)).toBeLessThan(2);
  }
  expect(await pictureOf(revisionId, { ...line, garmentId: 'another' })).toBeNull();
  expect(await pictureOf(revisionId, { ...line, side: 'leftSleeve' })).toBeNull();
});

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
  const webp = await pictureOf(scene.revisionId, { kind: 'scene', sha256: scene.hash });
  expect(Buffer.from(webp ?? []).toString('latin1', 8, 12)).toBe('WEBP');
  expect(await pictureOf(other.id, { kind: 'scene', sha256: scene.hash })).toBeNull();
});
