import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { setCounts } from '@/lib/domain/layout/garment-edits';
import { composePrints } from '@/lib/domain/layout/scene';
import { typeCase } from '@/lib/domain/layout/type-case';
import type { Lettering } from '@/lib/domain/lettering/lettering';
import { reader } from '@/lib/server/db/database';
import { editDraft, saveDraft } from '@/lib/server/drafts/drafts';
import { printPng } from '@/lib/server/draw/print-png';
import { createJob } from '@/lib/server/jobs/create-job';
import { loadJob } from '@/lib/server/jobs/load-jobs';
import { loadProof } from '@/lib/server/revisions/load-proof';
import { printFile } from '@/lib/server/revisions/revision-files';
import { sealedRevision, sealedScene } from '@/lib/server/revisions/sealed-files';
import { loadTypeEngine } from '@/lib/server/text/load-type-engine';
import { teeWithPrints } from '../unit/layout/sample-layout';
import { letteringOf, shippedFont } from '../unit/lettering/fonts-at-hand';
import { type FreshDatabase, freshDatabase } from './database';
import { addShop, customerOf, sendNow, someMaker, withLettering } from './job-fixture';

let fresh: FreshDatabase;
const maker = someMaker();
beforeAll(async () => {
  fresh = await freshDatabase();
  await addShop(maker);
});
afterAll(() => fresh.remove());

const MM_PER_PX = 25.4 / 300;
const LINED = { outline: { hex: '#FFCC00', widthUm: 3_000 }, hex: '#C02020' } as const;

/** A job with twelve tees and no picture. */
async function bareJob(): Promise<string> {
  const { jobId } = await createJob(maker, {
    customerName: 'Saltmarsh Rowing Club',
    customerEmail: 'crew@example.org',
    customerPhone: null,
    title: 'Autumn relay shirts',
    neededBy: '2027-10-02T16:00',
    notes: '',
  });
  await editDraft(maker, jobId, (layout) => {
    const { garments } = teeWithPrints([]);
    return setCounts({ ...layout, garments }, 'tee', [{ blankId: 'crew-tee-adult', sizeId: 'M', quantity: 12 }]);
  });
  return jobId;
}

async function letteredJob(lettering: Lettering): Promise<string> {
  const jobId = await bareJob();
  await editDraft(maker, jobId, (layout) => withLettering(layout, lettering));
  return jobId;
}

describe('a print file of lettering', () => {
  it('is its ink at 300 px per inch to the pixel, the line round the letters in its own colour', async () => {
    const type = typeCase(await loadTypeEngine([shippedFont('Oswald')]), { columns: [], lines: [] });
    const layout = withLettering(teeWithPrints([]), letteringOf(['HI'], LINED));
    const key = {
      garmentId: 'tee',
      size: { blankId: 'crew-tee-adult', sizeId: 'M' },
      side: 'back',
      lineId: null,
    } as const;
    const [shape] = composePrints(layout, key, type.sample);
    if (!shape) throw new Error('nothing is lettered');
    const made = await printPng(shape, []);
    const { data, info } = await sharp(Buffer.from(made.png)).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
    const rows = [...Array(info.height).keys()].filter((y) => hasInk(data, info.width, y));
    // 2 in tall letters with 3 mm round them: nothing else is in the file, and nothing is cut off.
    expect(Math.abs(rows.length * MM_PER_PX - 56.8)).toBeLessThan(2 * MM_PER_PX);
    expect(rows.length).toBe(info.height);
    const colours = new Set<string>();
    for (let at = 0; at < data.length; at += 4) {
      if (data[at + 3] === 255) colours.add([data[at], data[at + 1], data[at + 2]].join());
    }
    expect(colours.has('255,204,0') && colours.has('192,32,32')).toBe(true);
  });
});

function hasInk(data: Buffer, width: number, y: number): boolean {
  for (let x = 0; x < width; x += 1) if ((data[(y * width + x) * 4 + 3] ?? 0) >= 8) return true;
  return false;
}

describe('a working copy with lettering', () => {
  it('is saved with a font that is there, and with no other', async () => {
    const jobId = await bareJob();
    const job = await loadJob(maker, jobId);
    if (!job) throw new Error('no job');
    const { version, layout } = job.draft;
    const font = { sha256: 'f'.repeat(64), family: 'Nowhere', style: 'Bold' };
    const strange = withLettering(layout, letteringOf(['CREW'], { font }));
    expect(await saveDraft(maker, jobId, version, strange)).toEqual({ ok: false, reason: 'invalid' });
    expect(await saveDraft(maker, jobId, version, withLettering(layout, letteringOf(['CREW'])))).toMatchObject({
      ok: true,
    });
  });
});

describe('a revision with lettering', () => {
  it('keeps the letters as outlines, asks for the spelling, and gives a print file of fixed words', async () => {
    const jobId = await letteredJob(letteringOf(['Saltmarsh'], LINED));
    const sent = await sendNow(maker, jobId);
    if (!sent.ok) throw new Error(sent.reason);
    const proof = await loadProof(await customerOf(jobId));
    expect(proof?.lettered).toBe(true);
    const back = proof?.garments[0]?.sizes[0]?.sides.find(({ side }) => side === 'back');
    const print = back?.prints[0];
    expect(print?.reading.capHeightUm).toBe(50_800);
    const scene = await sealedScene(sent.revisionId, back?.sceneSha256 ?? '');
    const letters = scene?.shapes.find((shape) => shape.kind === 'glyphs' && shape.layer === 'print');
    expect(letters).toMatchObject({ text: 'SALTMARSH', fill: '#C02020', outline: { hex: '#FFCC00', widthMm: 3 } });
    const kept = (await sealedRevision(sent.revisionId))?.envelope.layout.prints.find(
      ({ content }) => content.kind === 'lettering',
    );
    expect(kept?.content).toMatchObject({ lettering: { font: shippedFont('Oswald') } });
    const file = await printFile(sent.revisionId, print?.printId ?? '', print?.groupId ?? '');
    expect(file?.heightPx).toBeGreaterThan((50.8 + 6) / MM_PER_PX - 2);
  });

  it('is not sent while some letter of it is in no font', async () => {
    const jobId = await letteredJob(letteringOf(['A\u{13000}']));
    expect(await sendNow(maker, jobId)).toEqual({ ok: false, reason: 'lettersMissing' });
    expect(await reader().revision.count({ where: { jobId } })).toBe(0);
  });
});
