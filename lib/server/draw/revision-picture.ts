import type { ComposeRequest } from '../image/compose';
import { loadTypeface } from '../text/outline-text';
import { runInWorker } from '../workers/pool';
import { type RevisionSheetInput, revisionSheet, type SheetWords } from './revision-sheet';
import { sceneLayers } from './scene-layers';
import { filesOfPictures, PAINT_LIMIT_MS } from './scene-picture';

/**
 * A whole revision as one PNG, for a customer who never opens a link: every garment front and back on a middle size,
 * readings in words, cloth and counts, shop, job, revision and short seal.
 */
export async function revisionPicture(input: RevisionSheetInput, words: SheetWords): Promise<Uint8Array> {
  const typefaces = { regular: await loadTypeface('regular'), bold: await loadTypeface('bold') };
  const sheet = revisionSheet(input, words, typefaces);
  const pictureFile = await filesOfPictures(sheet.scenes.flatMap(({ scene }) => scene.shapes));
  const request: ComposeRequest = {
    widthPx: sheet.widthPx,
    heightPx: sheet.heightPx,
    layers: [
      { kind: 'svg', svg: sheet.svg, leftPx: 0, topPx: 0 },
      ...sheet.scenes.flatMap(({ scene, frame }) => sceneLayers(scene.shapes, frame, pictureFile)),
    ],
    output: { kind: 'png' },
  };
  return runInWorker<ComposeRequest, Uint8Array>('compose', request, { timeoutMs: PAINT_LIMIT_MS });
}
