import { type PictureName, pictureFileName } from '@/lib/domain/revision/picture-name';
import { sidesOnLine } from '@/lib/domain/revision/view';
import { reader, write } from '../db/database';
import { newId } from '../db/new-id';
import { isUniqueClash } from '../db/refusals';
import type { KeptPicture } from '../draw/scene-picture';
import { pictureFiles } from '../files/store';
import { drawPicture } from './draw-picture';
import { viewOf } from './revision-view';
import { personalSceneHashes } from './seal-personal-scenes';

/** Pictures being made now, so that two who ask at once wait for one. */
const underWay = new Map<string, Promise<Uint8Array | null>>();

/**
 * A WebP picture of a revision; null when the revision does not show it. Made at the first call and kept: a sent revision
 * never changes.
 */
export async function pictureOf(revisionId: string, picture: PictureName): Promise<Uint8Array | null> {
  const key = keyOf(picture);
  const kept = await reader().revisionPicture.findUnique({
    where: { revisionId_key: { revisionId, key } },
    select: { sha256: true },
  });
  if (kept && (await pictureFiles().has(kept.sha256))) return pictureFiles().read(kept.sha256);
  const name = `${revisionId} ${key}`;
  const making = underWay.get(name) ?? makePicture(revisionId, picture).finally(() => underWay.delete(name));
  underWay.set(name, making);
  return making;
}

/** Makes every picture of a revision that is not there yet, one after the other, until `isStopped`. */
export async function makePictures(revisionId: string, isStopped: () => boolean = () => false): Promise<void> {
  const [wanted, kept] = await Promise.all([
    picturesOf(revisionId),
    reader().revisionPicture.findMany({ where: { revisionId }, select: { key: true } }),
  ]);
  const there = new Set(kept.map(({ key }) => key));
  for (const picture of wanted) {
    if (isStopped()) return;
    if (!there.has(keyOf(picture))) await pictureOf(revisionId, picture);
  }
}

/** Every picture a revision has: each drawing once, each garment's lines, and what each person gets. */
async function picturesOf(revisionId: string): Promise<PictureName[]> {
  const [scenes, view, personal] = await Promise.all([
    reader().revisionScene.findMany({
      where: { revisionId, line: '' },
      orderBy: { id: 'asc' },
      select: { hash: true },
    }),
    viewOf(revisionId),
    personalSceneHashes(revisionId),
  ]);
  const hashes = new Set(scenes.map(({ hash }) => hash));
  return [
    ...[...hashes].map((sha256): PictureName => ({ kind: 'scene', sha256 })),
    ...(view?.garments ?? []).flatMap((garment) =>
      sidesOnLine(garment).map((side): PictureName => ({ kind: 'line', garmentId: garment.garmentId, side })),
    ),
    ...personal.map((sha256): PictureName => ({ kind: 'person', sha256 })),
  ];
}

/** How a picture is found among those of its revision. */
function keyOf(picture: PictureName): string {
  return picture.kind === 'scene' ? picture.sha256 : pictureFileName(picture);
}

async function makePicture(revisionId: string, picture: PictureName): Promise<Uint8Array | null> {
  const made = await drawPicture(revisionId, picture);
  if (!made) return null;
  await keepRow(revisionId, keyOf(picture), made);
  return pictureFiles().read(made.sha256);
}

async function keepRow(revisionId: string, key: string, made: KeptPicture): Promise<void> {
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
