import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ArtRef } from '@/lib/domain/art/art-ref';
import { pictureFrame } from '@/lib/domain/layout/picture-frame';
import { composeScene, type ImageShape, type Scene } from '@/lib/domain/layout/scene';
import { umFromInches } from '@/lib/domain/measure/length';
import { frozenScenes, withFrozenFlats } from '@/lib/domain/revision/frozen-scenes';
import { viewGarments } from '@/lib/domain/revision/view';
import { translatorFor } from '@/lib/messages/translator';
import { receiveArt } from '@/lib/server/art/receive-art';
import { write } from '@/lib/server/db/database';
import { printPng, sidePng } from '@/lib/server/draw/print-png';
import { revisionPicture } from '@/lib/server/draw/revision-picture';
import { drawScenePicture, scenePicture } from '@/lib/server/draw/scene-picture';
import { pictureFiles } from '@/lib/server/files/store';
import { loadOutliner } from '@/lib/server/text/outline-text';
import { teeWithPrints } from '../unit/layout/sample-layout';
import { addJob, type FreshDatabase, freshDatabase } from './database';

let fresh: FreshDatabase;
let art: ArtRef;
let artBytes: Buffer;

/** Art of 1800 × 1200 px: a red block and a blue one below it to the right, clear elsewhere. Its ink is 1500 × 1000 px. */
async function twoBlocks(): Promise<Buffer> {
  const block = (width: number, height: number, background: string) => ({
    create: { width, height, channels: 4 as const, background },
  });
  return sharp(block(1_800, 1_200, '#00000000'))
    .composite([
      { input: block(900, 500, '#C02020'), left: 100, top: 80 },
      { input: block(600, 500, '#2040C0'), left: 1_000, top: 580 },
    ])
    .png()
    .toBuffer();
}

beforeAll(async () => {
  fresh = await freshDatabase();
  artBytes = await twoBlocks();
  const jobId = await write((tx) => addJob(tx, new Date()));
  async function* body() {
    yield artBytes;
  }
  const received = await receiveArt({ jobId, name: 'blocks.png', declaredLength: artBytes.length, body: body() });
  if (!received.ok) throw new Error(received.reason);
  art = received.art.ref;
});
afterAll(() => fresh.remove());

const key = {
  garmentId: 'tee',
  size: { blankId: 'crew-tee-adult', sizeId: 'M' },
  side: 'front',
  lineId: null,
} as const;

function frontWith(turnCentideg: number, widthIn: number): { scene: Scene; image: ImageShape } {
  const layout = teeWithPrints(['fullFront'], art);
  const scene = composeScene(
    {
      ...layout,
      prints: layout.prints.map((print) => ({
        ...print,
        turnCentideg,
        sizeGroups: print.sizeGroups.map((group) => ({ ...group, widthUm: umFromInches(widthIn) })),
      })),
    },
    key,
  );
  const image = scene.shapes.find((shape) => shape.kind === 'image');
  if (image?.kind !== 'image') throw new Error('no print was drawn');
  return { scene, image };
}

async function pixelsOf(picture: Uint8Array) {
  const { data, info } = await sharp(Buffer.from(picture)).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return {
    ...info,
    at: (x: number, y: number) => [...data.subarray((y * info.width + x) * 4, (y * info.width + x) * 4 + 4)],
  };
}

function chunksOf(png: Uint8Array): { type: string; data: Buffer }[] {
  const bytes = Buffer.from(png);
  const chunks: { type: string; data: Buffer }[] = [];
  for (let at = 8; at < bytes.length; at += 12 + bytes.readUInt32BE(at)) {
    const length = bytes.readUInt32BE(at);
    chunks.push({ type: bytes.toString('latin1', at + 4, at + 8), data: bytes.subarray(at + 8, at + 8 + length) });
  }
  return chunks;
}

describe('a print file', () => {
  it('says 300 px per inch and sRGB (PNG Third Edition, 11.3.4.3 and 11.3.2.5)', async () => {
    const { png } = await printPng(frontWith(0, 5).image, [art]);
    const chunks = chunksOf(png);
    const density = chunks.find(({ type }) => type === 'pHYs')?.data;
    expect([density?.readUInt32BE(0), density?.readUInt32BE(4), density?.[8]]).toEqual([11_811, 11_811, 1]);
    expect(chunks.map(({ type }) => type).slice(0, 2)).toEqual(['IHDR', 'sRGB']);
    expect(chunks.at(-1)?.type).toBe('IEND');
  });

  it('is the art’s own ink, pixel for pixel, where 1500 px print 5 in wide', async () => {
    const file = await printPng(frontWith(0, 5).image, [art]);
    expect([file.widthPx, file.heightPx]).toEqual([1_500, 1_000]);
    const ours = await sharp(Buffer.from(file.png)).ensureAlpha().raw().toBuffer();
    const { x, y, width, height } = art.inkBox;
    const theirs = await sharp(artBytes).extract({ left: x, top: y, width, height }).ensureAlpha().raw().toBuffer();
    expect(ours.equals(theirs)).toBe(true);
  });

  it.each([
    [2, 600, 400],
    [10, 3_000, 2_000],
  ])('holds the ink at %i in wide and no more', async (widthIn, widthPx, heightPx) => {
    const file = await printPng(frontWith(0, widthIn).image, [art]);
    expect([file.widthPx, file.heightPx]).toEqual([widthPx, heightPx]);
    const pixels = await pixelsOf(file.png);
    expect(pixels.at(5, 5)).toEqual([0xc0, 0x20, 0x20, 255]);
    expect(pixels.at(widthPx - 5, heightPx - 5)).toEqual([0x20, 0x40, 0xc0, 255]);
    expect(pixels.at(widthPx - 5, 5)[3]).toBe(0);
  });

  it('turns the ink with the print, clockwise', async () => {
    const file = await printPng(frontWith(9_000, 5).image, [art]);
    expect([file.widthPx, file.heightPx]).toEqual([1_000, 1_500]);
    const pixels = await pixelsOf(file.png);
    expect(pixels.at(990, 10)).toEqual([0xc0, 0x20, 0x20, 255]);
    expect(pixels.at(10, 1_490)).toEqual([0x20, 0x40, 0xc0, 255]);
    expect(pixels.at(10, 10)[3]).toBe(0);
  });

  it('says of a whole side where its upper left corner lies', async () => {
    const { scene, image } = frontWith(2_500, 6);
    const side = await sidePng(scene, [art]);
    const alone = await printPng(image, [art]);
    expect(Math.abs((side?.widthPx ?? 0) - alone.widthPx)).toBeLessThanOrEqual(1);
    expect(Number.isInteger(side?.originXUm) && Number.isInteger(side?.originYUm)).toBe(true);
    expect(await sidePng({ shapes: scene.shapes.filter(({ kind }) => kind !== 'image') }, [art])).toBeNull();
  });

  it('will not be made from art that the layout does not name', async () => {
    await expect(printPng(frontWith(0, 5).image, [])).rejects.toThrow(/does not name/);
  });
});

describe('a garment’s picture', () => {
  it('shows the print on the cloth where the scene says, clear around the garment', async () => {
    const { scene, image } = frontWith(0, 10);
    const frame = pictureFrame([scene]);
    const pixels = await pixelsOf(await drawScenePicture(scene, frame));
    expect([pixels.width, pixels.height]).toEqual([frame.widthPx, frame.heightPx]);
    const pxPerMm = frame.widthPx / frame.box.width;
    const at = (xPx: number, yPx: number) => {
      const [a, , , d, e, f] = image.matrix;
      const [xMm, yMm] = [a * xPx + e, d * yPx + f];
      return pixels.at(Math.round((xMm - frame.box.x) * pxPerMm), Math.round((yMm - frame.box.y) * pxPerMm));
    };
    expectNear(at(500, 300), [0xc0, 0x20, 0x20]);
    expectNear(at(1_300, 800), [0x20, 0x40, 0xc0]);
    expectNear(at(1_300, 300), [0x20, 0x34, 0x4f]);
    expect(pixels.at(2, 2)[3]).toBe(0);
  });

  it('is kept once among the pictures that can be drawn again', async () => {
    const { scene } = frontWith(1_000, 8);
    const frame = pictureFrame([scene]);
    const [first, second] = [await scenePicture(scene, frame), await scenePicture(scene, frame)];
    expect(second).toEqual(first);
    expect(await sharp(Buffer.from(await pictureFiles().read(first.sha256))).metadata()).toMatchObject({
      format: 'webp',
      width: frame.widthPx,
      height: frame.heightPx,
    });
  });

  it('is not made without its art', async () => {
    const { scene } = frontWith(0, 10);
    const lost = scene.shapes.map((shape) => (shape.kind === 'image' ? { ...shape, sha256: 'f'.repeat(64) } : shape));
    await expect(drawScenePicture({ shapes: lost }, pictureFrame([scene]))).rejects.toThrow(/not among the kept files/);
  });
});

describe('a revision in one picture', () => {
  async function drawn(jobTitle: string): Promise<Uint8Array> {
    const sample = teeWithPrints(['fullFront', 'backNeck'], art);
    const counts = [
      { blankId: 'crew-tee-youth', sizeId: 'M', quantity: 2 },
      { blankId: 'crew-tee-adult', sizeId: 'L', quantity: 5 },
    ];
    const layout = withFrozenFlats({ ...sample, garments: sample.garments.map((garment) => ({ ...garment, counts })) });
    const scenes = frozenScenes(layout, 'in', await loadOutliner());
    return revisionPicture(
      {
        shopName: 'Otterbank Press',
        jobTitle,
        number: 2,
        seal: `7f3a19c2${'0'.repeat(56)}`,
        unit: 'in',
        garments: viewGarments(layout, scenes),
        sceneOf: (sha256) => {
          const found = scenes.find((scene) => scene.sha256 === sha256);
          if (!found) throw new Error(sha256);
          return found.scene;
        },
      },
      { picture: translatorFor('en', 'picture'), readings: translatorFor('en', 'readings') },
    );
  }

  it('is a PNG about as wide as a phone shows three times over, ready to be sent', async () => {
    const png = await drawn('Autumn relay shirts');
    expect(await sharp(Buffer.from(png)).metadata()).toMatchObject({ format: 'png', width: 1_200 });
    expect(png.length).toBeLessThan(2_000_000);
  });

  it('is made whatever letters the job’s title has', async () => {
    expect((await drawn('Zoë’s 🚣 漢字 shirts')).length).toBeGreaterThan(10_000);
  });
});

function expectNear(pixel: readonly number[], colour: readonly [number, number, number]): void {
  for (const [index, value] of colour.entries()) expect(Math.abs((pixel[index] ?? 0) - value)).toBeLessThan(12);
  expect(pixel[3]).toBe(255);
}
