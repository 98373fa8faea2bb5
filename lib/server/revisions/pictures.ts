import { LRUCache } from 'lru-cache';
import { type PictureFrame, pictureFrame } from '@/lib/domain/layout/picture-frame';
import { reader, write } from '../db/database';
import { newId } from '../db/new-id';
import { isUniqueClash } from '../db/refusals';
import { scenePicture } from '../draw/scene-picture';
import { pictureFiles } from '../files/store';
import { sealedScene, sealedScenesOf } from './sealed-files';

/** Pictures being made now, so that two who ask at once wait for one. */
const underWay = new Map<string, Promise<Uint8Array | null>>();

/** Frames of garments whose pictures are being made; a sealed revision never changes, so they hold. */
const MOST_KEPT_FRAMES = 100;
const frames = new LRUCache<string, PictureFrame>({ max: MOST_KEPT_FRAMES });

/**
 * The WebP picture of one sealed drawing of a revision; null when the revision does not show it. Made at the first call
 * and kept: a sent revision never changes.
 */
export async function pictureOf(revisionId: string, sceneSha256: string): Promise<Uint8Array | null> {
  const kept = await reader().revisionPicture.findUnique({
    where: { revisionId_key: { revisionId, key: sceneSha256 } },
    select: { sha256: true },
  });
  if (kept && (await pictureFiles().has(kept.sha256))) return pictureFiles().read(kept.sha256);
  const name = `${revisionId} ${sceneSha256}`;
  const making = underWay.get(name) ?? makePicture(revisionId, sceneSha256).finally(() => underWay.delete(name));
  underWay.set(name, making);
  return making;
}

/** Makes every picture of a revision that is not there yet, one after the other, until `isStopped`. */
export async function makePictures(revisionId: string, isStopped: () => boolean = () => false): Promise<void> {
  const [scenes, kept] = await Promise.all([
    reader().revisionScene.findMany({
      where: { revisionId, line: '' },
      orderBy: { id: 'asc' },
      select: { hash: true },
    }),
    reader().revisionPicture.findMany({ where: { revisionId }, select: { key: true } }),
  ]);
  const there = new Set(kept.map(({ key }) => key));
  for (const { hash } of scenes) {
    if (isStopped()) return;
    if (!there.has(hash)) await pictureOf(revisionId, hash);
  }
}

async function makePicture(revisionId: string, sceneSha256: string): Promise<Uint8Array | null> {
  const scene = await sealedScene(revisionId, sceneSha256);
  if (!scene) return null;
  const made = await scenePicture(scene, await frameOf(revisionId, scene.garmentId));
  await keepRow(revisionId, sceneSha256, made);
  return pictureFiles().read(made.sha256);
}

/** The frame that all pictures of one garment share: its scenes are read for the first of them only. */
async function frameOf(revisionId: string, garmentId: string): Promise<PictureFrame> {
  const name = `${revisionId} ${garmentId}`;
  const known = frames.get(name);
  if (known) return known;
  const frame = pictureFrame(await sealedScenesOf(revisionId, garmentId));
  frames.set(name, frame);
  return frame;
}

async function keepRow(revisionId: string, key: string, made: Awaited<ReturnType<typeof scenePicture>>): Promise<void> {
  const row = { ...made, madeAt: new Date() };
  try {
    await write((tx) =>
      tx.revisionPicture.upsert({
        where: { revisionId_key: { revisionId, key } },
        create: { id: newId(), revisionId, key, ...row },
        update: row,
      }),
    );
  } catch (error) {
    // Another process made the same picture at the same moment; its row says the same.
    if (!isUniqueClash(error)) throw error;
  }
}
