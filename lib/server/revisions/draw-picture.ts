import { LRUCache } from 'lru-cache';
import type { Side } from '@/lib/domain/garment/flat';
import { lineStrip } from '@/lib/domain/layout/line-strip';
import { photographUnder, sceneOnPhotograph } from '@/lib/domain/layout/photograph-scene';
import { type PictureFrame, pictureFrame } from '@/lib/domain/layout/picture-frame';
import type { Scene } from '@/lib/domain/layout/scene';
import type { PictureName } from '@/lib/domain/revision/picture-name';
import { sidesOnLine } from '@/lib/domain/revision/view';
import { personFrame } from '@/lib/domain/revision/view-people';
import { linePicture } from '../draw/line-picture';
import { type KeptPicture, scenePicture } from '../draw/scene-picture';
import { viewOf } from './revision-view';
import { sealedPersonalScene } from './seal-personal-scenes';
import { sealedRevision, sealedScene, sealedScenesOf } from './sealed-files';

/** Frames of garments whose pictures are being made; a sealed revision never changes, so they hold. */
const MOST_KEPT_FRAMES = 100;
const frames = new LRUCache<string, PictureFrame>({ max: MOST_KEPT_FRAMES });

/** Draws a picture of a revision from its sealed drawings; null when the revision does not show it. */
export async function drawPicture(revisionId: string, picture: PictureName): Promise<KeptPicture | null> {
  if (picture.kind === 'line') return drawLine(revisionId, picture.garmentId, picture.side);
  if (picture.kind === 'person') return drawPerson(revisionId, picture.sha256);
  const scene = await sealedScene(revisionId, picture.sha256);
  const drawn = scene && picture.kind === 'photograph' ? await onPhotograph(revisionId, scene) : scene;
  return scene && drawn && scenePicture(drawn, await frameOf(revisionId, scene.garmentId));
}

async function drawPerson(revisionId: string, sha256: string): Promise<KeptPicture | null> {
  const scene = await sealedPersonalScene(revisionId, sha256);
  if (!scene) return null;
  const name = `${revisionId} ${scene.garmentId} person`;
  const known = frames.get(name);
  const layout = known ? undefined : (await sealedRevision(revisionId))?.envelope.layout;
  const frame = known ?? (layout && personFrame(layout, scene.garmentId));
  if (!frame) return null;
  frames.set(name, frame);
  return scenePicture(scene, frame);
}

/** A sealed scene over the photograph that was sealed with it; null where there is none. */
async function onPhotograph(revisionId: string, scene: Scene) {
  const layout = (await sealedRevision(revisionId))?.envelope.layout;
  const { garmentId, blankId, sizeId, side } = scene;
  const photograph = layout && photographUnder(layout, { garmentId, size: { blankId, sizeId }, side });
  return photograph ? sceneOnPhotograph(scene, photograph) : null;
}

async function drawLine(revisionId: string, garmentId: string, side: Side): Promise<KeptPicture | null> {
  const view = await viewOf(revisionId);
  const garment = view?.garments.find((each) => each.garmentId === garmentId);
  const strip = garment && lineStrip(garment, garment.sizes.length);
  if (!(garment && strip && sidesOnLine(garment).includes(side))) return null;
  const scenes = garment.sizes.map(async ({ sides }) => {
    const shown = sides.find((each) => each.side === side);
    return shown ? sealedScene(revisionId, shown.sceneSha256) : null;
  });
  return linePicture(await Promise.all(scenes), await frameOf(revisionId, garmentId), strip);
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
