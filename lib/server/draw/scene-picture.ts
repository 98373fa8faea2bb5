import type { DrawnShape } from '@/lib/domain/layout/photograph-scene';
import type { PictureFrame } from '@/lib/domain/layout/picture-frame';
import { proxyFile } from '../art/proxies';
import { pictureFiles } from '../files/store';
import type { ComposeRequest } from '../image/compose';
import { runInWorker } from '../workers/pool';
import { picturesIn, sceneLayers } from './scene-layers';

/** How long one picture may take to be painted. */
export const PAINT_LIMIT_MS = 60_000;

/** A picture that was drawn and kept: WebP, clear around the garment. */
export type KeptPicture = {
  readonly sha256: string;
  readonly mediaType: 'image/webp';
  readonly widthPx: number;
  readonly heightPx: number;
};

/** A scene as it was sealed, or over a photograph. */
type Drawn = { readonly shapes: readonly DrawnShape[] };

/** Draws a scene in the frame that all pictures of its garment share. WebP bytes. */
export async function drawScenePicture(scene: Drawn, frame: PictureFrame): Promise<Uint8Array> {
  const { box, widthPx, heightPx } = frame;
  const pictureFile = await filesOfPictures(scene.shapes);
  const request: ComposeRequest = {
    widthPx,
    heightPx,
    layers: sceneLayers(scene.shapes, { box, leftPx: 0, topPx: 0, widthPx, heightPx }, pictureFile),
    output: { kind: 'webp' },
  };
  return runInWorker<ComposeRequest, Uint8Array>('compose', request, { timeoutMs: PAINT_LIMIT_MS });
}

/** Draws a sealed scene and keeps the picture among the pictures that can be drawn again. */
export async function scenePicture(scene: Drawn, frame: PictureFrame): Promise<KeptPicture> {
  const webp = await drawScenePicture(scene, frame);
  const { sha256 } = await pictureFiles().store(webp);
  return { sha256, mediaType: 'image/webp', widthPx: frame.widthPx, heightPx: frame.heightPx };
}

/** The small picture's file for each picture of a scene. Throws where the art is gone: a picture without it would lie. */
export async function filesOfPictures(shapes: readonly DrawnShape[]): Promise<(sha256: string) => string> {
  const files = new Map<string, string>();
  for (const sha256 of picturesIn(shapes)) {
    const file = await proxyFile(sha256);
    if (!file) throw new Error(`The picture ${sha256} is not among the kept files.`);
    files.set(sha256, file);
  }
  return (sha256) => {
    const file = files.get(sha256);
    if (!file) throw new Error(`no file for ${sha256}`);
    return file;
  };
}
