import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { typeCase } from '@/lib/domain/layout/type-case';
import { sha256Hex } from '@/lib/domain/revision/canonical';
import { personalScenes } from '@/lib/domain/revision/personal-scenes';
import { reader, write } from '@/lib/server/db/database';
import { loadJob } from '@/lib/server/jobs/load-jobs';
import { loadProof } from '@/lib/server/revisions/load-proof';
import { proofPicture } from '@/lib/server/revisions/proof-picture';
import { printFile } from '@/lib/server/revisions/revision-files';
import { sealedPeople } from '@/lib/server/revisions/seal-people';
import { sealedPersonalScene } from '@/lib/server/revisions/seal-personal-scenes';
import { sealedRevision } from '@/lib/server/revisions/sealed-files';
import { loadTypeEngine } from '@/lib/server/text/load-type-engine';
import { shippedFont } from '../unit/lettering/fonts-at-hand';
import { type FreshDatabase, freshDatabase } from './database';
import { addShop, customerOf, someMaker } from './job-fixture';
import { sendCrew } from './lettered-crew';

const CREW = [
  { name: 'Okafor', number: '00' },
  { name: 'Ó Súilleabháin', number: '7' },
] as const;

let fresh: FreshDatabase;
let jobId: string;
let revisionId: string;
const maker = someMaker();
beforeAll(async () => {
  fresh = await freshDatabase();
  await addShop(maker);
  ({ jobId, revisionId } = await sendCrew(maker, CREW));
});
afterAll(() => fresh.remove());

describe('a revision with words that differ by person', () => {
  it('seals a drawing of each that spells their words, and shows it to whoever may see names', async () => {
    const access = await customerOf(jobId);
    const proof = await loadProof(access);
    expect(proof?.lettered).toBe(true);
    const lines = proof?.people?.lines ?? [];
    expect(lines.map(({ name }) => name)).toEqual(['Okafor', 'Ó Súilleabháin']);
    expect(lines.map(({ garments }) => garments[0]?.sides[0]?.words)).toEqual([
      [{ print: 'Words', text: 'OKAFOR\n00' }],
      [{ print: 'Words', text: 'Ó SÚILLEABHÁIN\n7' }],
    ]);
    const [first] = lines.map(({ garments }) => garments[0]?.sides[0]?.sceneSha256 ?? '');
    const sealed = await sealedRevision(revisionId);
    expect(sealed?.envelope.scenes.map(({ sha256 }) => sha256)).toContain(first);
    const scene = await sealedPersonalScene(revisionId, first ?? '');
    expect(scene?.salt).toMatch(/^[0-9a-f]{64}$/);
    // What names somebody is never among the drawings that are kept for good.
    expect(await reader().drawing.count({ where: { sha256: first ?? '' } })).toBe(0);
    const picture = { kind: 'person', sha256: first ?? '' } as const;
    const webp = await proofPicture(access, 1, picture);
    const frame = proof?.people?.frames[0];
    expect(await sharp(Buffer.from(webp ?? [])).metadata()).toMatchObject({
      format: 'webp',
      width: frame?.widthPx,
      height: frame?.heightPx,
    });
    const unnamed = { ...access, may: { ...access.may, seeNames: false } };
    expect((await loadProof(unnamed))?.people).toBeNull();
    expect(await proofPicture(unnamed, 1, picture)).toBeNull();
  });

  it('gives print files of one person, at 300 px per inch, and none of samples', async () => {
    const proof = await loadProof(await customerOf(jobId));
    const back = proof?.garments[0]?.sizes[0]?.sides.find(({ side }) => side === 'back');
    const { printId, groupId } = back?.prints[0] ?? { printId: '', groupId: '' };
    const person = proof?.people?.lines[0];
    expect(await printFile(revisionId, printId, groupId)).toBeNull();
    expect(await printFile(revisionId, printId, groupId, 'nobody')).toBeNull();
    const file = await printFile(revisionId, printId, groupId, person?.personId ?? '');
    expect(file?.fileName).toContain('OKAFOR 00');
    // Two lines of letters and 40 % of their height between them, and what round letters reach beyond (at most 5 %).
    const tallUm = 2.4 * (back?.prints[0]?.reading.capHeightUm ?? 0);
    expect(tallUm).toBeGreaterThan(0);
    expect((file?.heightPx ?? 0) / 300).toBeGreaterThan(tallUm / 25_400 - 0.005);
    expect((file?.heightPx ?? 0) / 300).toBeLessThan((1.05 * tallUm) / 25_400);
  });

  it('is another drawing for each when two people are swapped', async () => {
    const { layout } = await sentLayout();
    const engine = await loadTypeEngine([shippedFont('Oswald')]);
    const hashes = ({ people }: LayoutDocument) =>
      personalScenes({ ...layout, people }, typeCase(engine, people), () => 'one salt for all').map((each) => [
        each.keyText,
        each.sha256,
      ]);
    const [one, two] = layout.people.lines;
    if (!(one && two)) throw new Error('a crew of two');
    const swapped = [
      { ...one, fields: two.fields },
      { ...two, fields: one.fields },
    ];
    const [before, after] = [hashes(layout), hashes({ ...layout, people: { ...layout.people, lines: swapped } })];
    expect(before).toHaveLength(2);
    expect(after.map(([key]) => key)).toEqual(before.map(([key]) => key));
    for (const [at, [, sha256]] of before.entries()) expect(after[at]?.[1]).not.toBe(sha256);
  });

  it('keeps its seal when one person is erased, whose words are then in nothing that can be opened', async () => {
    const lines = (await loadProof(await customerOf(jobId)))?.people?.lines ?? [];
    const [gone, left] = lines.map(({ garments }) => garments[0]?.sides[0]?.sceneSha256 ?? '');
    const rows = await reader().revisionScene.findMany({ where: { revisionId, hash: gone ?? '' } });
    await write(async (tx) => {
      await tx.personalDrawing.deleteMany({ where: { sceneId: { in: rows.map(({ id }) => id) } } });
      await tx.revisionLine.deleteMany({ where: { revisionId, position: 0 } });
    });
    const sealed = await sealedRevision(revisionId);
    expect(sha256Hex(sealed?.bytes ?? new Uint8Array())).toBe(sealed?.seal);
    expect(new TextDecoder().decode(sealed?.bytes)).not.toMatch(/okafor/i);
    expect((await sealedPeople(revisionId))?.whole).toBe(false);
    expect(await sealedPersonalScene(revisionId, gone ?? '')).toBeNull();
    const still = await sealedPersonalScene(revisionId, left ?? '');
    expect(still?.shapes.some((shape) => shape.kind === 'glyphs' && shape.text.startsWith('Ó SÚI'))).toBe(true);
  });
});

async function sentLayout() {
  const job = await loadJob(maker, jobId);
  if (!job) throw new Error('no job');
  return job.draft;
}
