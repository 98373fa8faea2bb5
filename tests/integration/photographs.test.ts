import { readdirSync } from 'node:fs';
import { Readable } from 'node:stream';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { BlankStyle } from '@/lib/domain/garment/blank-style';
import { starterChart, USUAL_CUT_TOLERANCE } from '@/lib/domain/garment/starter-charts';
import { type Box, boxAround } from '@/lib/domain/geometry/box';
import type { Point } from '@/lib/domain/geometry/point';
import { blankFromStyle } from '@/lib/domain/layout/blank-from-style';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { addGarment, startingPrint } from '@/lib/domain/layout/garment-edits';
import type { PhotographSetting } from '@/lib/domain/layout/photograph';
import { photographUnder, withPhotographs } from '@/lib/domain/layout/photograph-scene';
import { pictureFrame } from '@/lib/domain/layout/picture-frame';
import { receiveArt } from '@/lib/server/art/receive-art';
import { addBlank } from '@/lib/server/blanks/add-blank';
import { editBlank } from '@/lib/server/blanks/edit-blank';
import { type BlankView, loadBlank } from '@/lib/server/blanks/load-blank';
import {
  flatToSetBy,
  listPhotographs,
  photographsFor,
  removePhotograph,
  setPhotograph,
} from '@/lib/server/blanks/photographs';
import { receivePhotograph } from '@/lib/server/blanks/receive-photograph';
import { reader } from '@/lib/server/db/database';
import { newId } from '@/lib/server/db/new-id';
import { editDraft } from '@/lib/server/drafts/drafts';
import { readFile } from '@/lib/server/files/store';
import { createJob } from '@/lib/server/jobs/create-job';
import { loadProof } from '@/lib/server/revisions/load-proof';
import { pictureOf } from '@/lib/server/revisions/pictures';
import { proofPicture } from '@/lib/server/revisions/proof-picture';
import { sealedScenesOf } from '@/lib/server/revisions/sealed-files';
import { CLOTH, MARK, type TakenPhotograph, takePhotograph } from '../photographs/taken-photograph';
import { type FreshDatabase, freshDatabase } from './database';
import { addShop, customerOf, sendNow, someMaker } from './job-fixture';

const INK = { r: 225, g: 30, b: 150 };
const MARK_AT = { x: -60, y: 560 };

let fresh: FreshDatabase;
const maker = someMaker();

beforeAll(async () => {
  fresh = await freshDatabase();
  await addShop(maker);
});
afterAll(() => fresh.remove());

async function tee(): Promise<BlankView> {
  const chart = starterChart('crew-tee-adult');
  if (!chart) throw new Error('no chart');
  const style: BlankStyle = {
    name: 'Regatta tee',
    kind: chart.kind,
    ageBand: chart.ageBand,
    fabric: 'Cotton',
    supplierNote: '',
    chartSource: 'own',
    cutToleranceUm: { ...USUAL_CUT_TOLERANCE },
    sizes: chart.sizes.map(({ id, label, entered }) => ({ sizeId: id, label, entered, costMinor: null })),
    colours: [{ colourId: 'green', name: 'Green', hex: '#1E963C', heather: false }],
  };
  const made = await addBlank(maker, style);
  const blank = made.ok ? await loadBlank(maker, made.blankId) : null;
  if (!blank) throw new Error('no blank');
  return blank;
}

function medium(blank: BlankView) {
  const size = blank.style.sizes.find(({ label }) => label === 'M');
  const [colour] = blank.style.colours;
  const by = size && flatToSetBy(blank.style, size.sizeId, 'front');
  if (!(by && colour)) throw new Error('no size M');
  return { ...by, sizeId: by.size.sizeId, colourId: colour.colourId };
}

function upload(blank: BlankView, bytes: Buffer, side = 'front') {
  const { sizeId, colourId } = medium(blank);
  const body = { declaredLength: bytes.length, body: Readable.from([bytes]) };
  return receivePhotograph(maker, { blankId: blank.blankId, sizeId, colourId, side }, body);
}

async function photographed(blank: BlankView, orientation: 1 | 6 = 1) {
  const { flat } = medium(blank);
  const taken = await takePhotograph(flat, {
    widthPx: 1_500,
    heightPx: 1_800,
    pxPerMm: 1.7,
    turnDeg: 7,
    markAt: MARK_AT,
    orientation,
  });
  const received = await upload(blank, taken.jpeg);
  if (!received.ok) throw new Error(received.reason);
  return { taken, photographId: received.photographId };
}

function settingOf(blank: BlankView, { inPicture }: TakenPhotograph): PhotographSetting {
  const { collarSeamCentre, hemCentre } = medium(blank).flat.points;
  if (!(collarSeamCentre && hemCentre)) throw new Error('no places');
  return {
    places: ['collarSeamCentre', 'hemCentre'],
    points: [inPicture(collarSeamCentre), inPicture(hemCentre)],
    check: null,
  };
}

async function setBlank(orientation: 1 | 6 = 1) {
  const blank = await tee();
  const { taken, photographId } = await photographed(blank, orientation);
  const set = await setPhotograph(maker, blank.blankId, photographId, settingOf(blank, taken));
  expect(set).toEqual({ ok: true });
  return { blank, taken, photographId };
}

/** A job with the tee in its colour, a print on its front, six of M ordered, the shop's photographs taken up. */
async function jobOf(blank: BlankView) {
  const { jobId } = await createJob(maker, {
    customerName: 'Saltmarsh Rowing Club',
    customerEmail: 'crew@example.org',
    customerPhone: null,
    title: 'Regatta shirts',
    neededBy: '2027-10-02T16:00',
    notes: '',
  });
  const png = await sharp({ create: { width: 3_000, height: 2_250, channels: 4, background: { ...INK, alpha: 1 } } })
    .png()
    .toBuffer();
  const art = await receiveArt({ jobId, name: 'ink.png', declaredLength: png.length, body: Readable.from([png]) });
  if (!art.ok) throw new Error(art.reason);
  const photographs = await photographsFor(maker, [blank.blankId, undefined]);
  const edited = await editDraft(maker, jobId, (layout): LayoutDocument => {
    const made = blankFromStyle(blank.style, { blankId: newId(), shopBlankId: blank.blankId });
    if (!made.ok) throw new Error(made.refusal.reason);
    const garment = {
      garmentId: 'tee',
      name: 'Regatta tee',
      cloth: { name: 'Green', hex: '#1E963C', heather: false },
      blanks: [made.blank],
      counts: [{ blankId: made.blank.blankId, sizeId: medium(blank).sizeId, quantity: 6 }],
    };
    const added = addGarment(layout, withPhotographs(garment, photographs));
    const print = startingPrint(added, art.art.ref, {
      printId: 'print',
      name: 'Ink',
      garmentIds: ['tee'],
      locationId: 'fullFront',
      newId,
    });
    if (!print) throw new Error('no place for the print');
    return { ...added, prints: [print] };
  });
  expect(edited.ok).toBe(true);
  return { jobId };
}

type Pixels = { readonly data: Buffer; readonly width: number; readonly height: number };

async function pixelsOf(webp: Uint8Array | null): Promise<Pixels> {
  if (!webp) throw new Error('no picture');
  const { data, info } = await sharp(Buffer.from(webp)).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height };
}

type Rgb = { readonly r: number; readonly g: number; readonly b: number };

/** The box of all pixels near a colour; edges are in between, so that it is read to a pixel. */
function boxOf({ data, width, height }: Pixels, { r, g, b }: Rgb, within = 60): Box {
  const found: Point[] = [];
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const at = (y * width + x) * 4;
      const off = Math.max(
        Math.abs((data[at] ?? 0) - r),
        Math.abs((data[at + 1] ?? 0) - g),
        Math.abs((data[at + 2] ?? 0) - b),
      );
      if (off < within && (data[at + 3] ?? 0) > 128) found.push({ x, y });
    }
  return boxAround(found);
}

function sides({ x, y, width, height }: Box): number[] {
  return [x, y, x + width, y + height];
}

describe('a photograph of a blank', () => {
  it('is kept upright with nothing the camera wrote beside it', async () => {
    const { blank } = await setBlank(6);
    const [photograph] = await listPhotographs(maker, blank.blankId);
    expect(photograph).toMatchObject({ widthPx: 1_500, heightPx: 1_800, side: 'front', colourName: 'Green' });
    const kept = await readFile(photograph?.sha256 ?? '');
    const { width, height, exif, orientation, icc, format } = await sharp(Buffer.from(kept)).metadata();
    expect({ width, height, exif, orientation, icc, format }).toEqual({
      width: 1_500,
      height: 1_800,
      exif: undefined,
      orientation: undefined,
      icc: undefined,
      format: 'jpeg',
    });
    const { taken } = await photographed(blank, 6);
    expect((await sharp(taken.jpeg).metadata()).exif).toBeDefined();
  });

  it('replaces the one of the same side, size and colour, and has to be set anew', async () => {
    const { blank, photographId } = await setBlank();
    await photographed(blank);
    const all = await listPhotographs(maker, blank.blankId);
    expect(all.map(({ setting }) => setting)).toEqual([null]);
    expect(all[0]?.photographId).not.toBe(photographId);
    expect(await photographsFor(maker, [blank.blankId])).toEqual([]);
    const late = await setPhotograph(maker, blank.blankId, photographId, {
      places: ['collarSeamCentre', 'hemCentre'],
      points: [
        { x: 700, y: 300 },
        { x: 700, y: 1_500 },
      ],
      check: null,
    });
    expect(late).toEqual({ ok: false, reason: 'noPhotograph' });
  });

  it('is refused where it is no picture, too small, of no side of the blank, or set to what cannot be', async () => {
    const blank = await tee();
    const before = readdirSync(`${fresh.folder}/files`, { recursive: true }).length;
    const rows = await reader().file.count();
    expect(await upload(blank, Buffer.from('Dear printer'))).toEqual({ ok: false, reason: 'notAPicture' });
    const small = await sharp({ create: { width: 900, height: 499, channels: 3, background: CLOTH } })
      .jpeg()
      .toBuffer();
    expect(await upload(blank, small)).toEqual({ ok: false, reason: 'tooSmall' });
    expect(await upload(blank, small, 'hood')).toEqual({ ok: false, reason: 'noSuchPlace' });
    expect(await upload({ ...blank, blankId: 'gone' }, small)).toEqual({ ok: false, reason: 'noBlank' });
    expect(readdirSync(`${fresh.folder}/files`, { recursive: true }).length).toBe(before);
    expect(await reader().file.count()).toBe(rows);
    const { photographId } = await photographed(blank);
    const near: PhotographSetting = {
      places: ['collarSeamCentre', 'hemCentre'],
      points: [
        { x: 700, y: 300 },
        { x: 700, y: 400 },
      ],
      check: null,
    };
    expect(await setPhotograph(maker, blank.blankId, photographId, near)).toEqual({ ok: false, reason: 'tooNear' });
    expect((await listPhotographs(maker, blank.blankId))[0]?.setting).toBeNull();
  });

  it('goes with its colour from the list, and keeps its setting when its size is called something else', async () => {
    const { blank } = await setBlank();
    const renamed = await editBlank(maker, blank.blankId, blank.updatedAt, (style) => ({
      ...style,
      sizes: style.sizes.map((size) => (size.label === 'M' ? { ...size, label: 'Medium' } : size)),
    }));
    expect(renamed).toEqual({ ok: true });
    expect((await listPhotographs(maker, blank.blankId))[0]?.setting).not.toBeNull();
    const { updatedAt } = (await loadBlank(maker, blank.blankId)) ?? blank;
    await editBlank(maker, blank.blankId, updatedAt, (style) => ({ ...style, colours: [] }));
    expect(await listPhotographs(maker, blank.blankId)).toEqual([]);
  });
});

describe('a sent revision on a photograph', () => {
  it('shows the print at the same pixels as the drawn picture, and the cloth where it was taken', async () => {
    const { blank } = await setBlank();
    const { jobId } = await jobOf(blank);
    const sent = await sendNow(maker, jobId);
    if (!sent.ok) throw new Error(sent.reason);
    const proof = await loadProof(await customerOf(jobId));
    const [front, back] = proof?.garments[0]?.sizes[0]?.sides ?? [];
    if (!(front && back)) throw new Error('no sides');
    expect([front.photographed, back.photographed]).toEqual([true, undefined]);

    const drawn = await pixelsOf(await pictureOf(sent.revisionId, { kind: 'scene', sha256: front.sceneSha256 }));
    const webp = await pictureOf(sent.revisionId, { kind: 'photograph', sha256: front.sceneSha256 });
    const onCloth = await pixelsOf(webp);
    expect([onCloth.width, onCloth.height]).toEqual([drawn.width, drawn.height]);
    const [a, b] = [sides(boxOf(drawn, INK)), sides(boxOf(onCloth, INK))];
    for (const [at, edge] of a.entries()) expect(Math.abs(edge - (b[at] ?? 0)), `edge ${at}`).toBeLessThanOrEqual(1);
    expect((a[2] ?? 0) - (a[0] ?? 0)).toBeGreaterThan(200);

    // The mark was put on the cloth at a known place of the flat: it has to lie there in the picture's own frame.
    const { box, widthPx } = pictureFrame(await sealedScenesOf(sent.revisionId, 'tee'));
    const pxPerMm = widthPx / box.width;
    const mark = boxOf(onCloth, MARK);
    const middle = { x: mark.x + (mark.width + 1) / 2, y: mark.y + (mark.height + 1) / 2 };
    expect(Math.abs(middle.x - (MARK_AT.x - box.x) * pxPerMm)).toBeLessThan(1);
    expect(Math.abs(middle.y - (MARK_AT.y - box.y) * pxPerMm)).toBeLessThan(1);
    expect(Math.abs(mark.width + 1 - 60 * pxPerMm)).toBeLessThanOrEqual(2);

    const customer = await customerOf(jobId);
    expect(await proofPicture(customer, 1, { kind: 'photograph', sha256: front.sceneSha256 })).toEqual(webp);
    expect(await proofPicture(customer, 1, { kind: 'photograph', sha256: back.sceneSha256 })).toBeNull();
  });

  it('keeps what it was sealed with when the shop removes the photograph, and a new job has none', async () => {
    const { blank, photographId } = await setBlank();
    const { jobId } = await jobOf(blank);
    const sent = await sendNow(maker, jobId);
    if (!sent.ok) throw new Error(sent.reason);
    await removePhotograph(maker, blank.blankId, photographId);
    const proof = await loadProof(await customerOf(jobId));
    const sha256 = proof?.garments[0]?.sizes[0]?.sides[0]?.sceneSha256 ?? '';
    expect(await pictureOf(sent.revisionId, { kind: 'photograph', sha256 })).not.toBeNull();

    const next = await jobOf(blank);
    const draft = await reader().draft.findUniqueOrThrow({ where: { jobId: next.jobId } });
    expect(draft.json).not.toContain('photographs');
  });

  it('is set by the measures of the job’s own garment', async () => {
    const { blank, taken } = await setBlank();
    const longer = blank.style.sizes.map((size) => ({
      ...size,
      entered: { ...size.entered, bodyLength: (size.entered.bodyLength ?? 0) + 25_400 },
    }));
    const made = blankFromStyle({ ...blank.style, sizes: longer }, { blankId: 'b', shopBlankId: blank.blankId });
    if (!made.ok) throw new Error(made.refusal.reason);
    const cloth = { name: 'Green', hex: '#1E963C', heather: false };
    const garment = withPhotographs(
      { garmentId: 'g', name: 'Tee', cloth, blanks: [made.blank], counts: [] },
      await photographsFor(maker, [blank.blankId]),
    );
    const under = photographUnder(
      { garments: [garment] },
      { garmentId: 'g', size: { blankId: 'b', sizeId: medium(blank).sizeId }, side: 'front' },
    );
    const hem = taken.inPicture(medium(blank).flat.points.hemCentre ?? { x: 0, y: 0 });
    const [, b, , d, , f] = under?.matrix ?? [0, 0, 0, 0, 0, 0];
    expect(b * hem.x + d * hem.y + f).toBeCloseTo((medium(blank).flat.points.hemCentre?.y ?? 0) + 25.4, 3);
  });
});
