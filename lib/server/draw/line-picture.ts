import { HANG_PX, type LineStrip, mmPerPxOnLine, placeOnLine } from '@/lib/domain/layout/line-strip';
import type { PictureFrame } from '@/lib/domain/layout/picture-frame';
import type { Scene } from '@/lib/domain/layout/scene';
import { pictureFiles } from '../files/store';
import type { ComposeRequest, SvgLayer } from '../image/compose';
import { runInWorker } from '../workers/pool';
import { sceneLayers } from './scene-layers';
import { filesOfPictures, type KeptPicture, PAINT_LIMIT_MS } from './scene-picture';

const STRING = '#6D5A45';
const WOOD = '#DDB985';
const WOOD_INK = '#7A5526';

/** Half the distance of a garment's two pegs, as a share of its width: on a tee just outside the neck (by eye). */
const PEG_REACH = 0.13;
const PEG = { widthPx: 7, abovePx: 16, belowPx: 13 } as const;

/**
 * Draws the line: one side of a garment in every size, hung side by side from a string, without the tapes, which could not
 * be read at this size. A size that has no such side leaves its place empty.
 */
export async function linePicture(
  scenes: readonly (Pick<Scene, 'box' | 'shapes'> | null)[],
  frame: PictureFrame,
  strip: LineStrip,
): Promise<KeptPicture> {
  const { placeWidthPx, widthPx, heightPx } = strip;
  const hung = scenes.flatMap((scene, at) =>
    scene
      ? [{ ...scene, shapes: scene.shapes.filter(({ layer }) => layer !== 'tape'), leftPx: at * placeWidthPx }]
      : [],
  );
  const pictureFile = await filesOfPictures(hung.flatMap(({ shapes }) => shapes));
  const request: ComposeRequest = {
    widthPx,
    heightPx,
    layers: [
      onTop(widthPx, `<path d="M0 ${HANG_PX - 9}H${widthPx}" stroke="${STRING}" stroke-width="3"/>`),
      ...hung.flatMap(({ shapes, box, leftPx }) =>
        sceneLayers(
          shapes,
          { box: placeOnLine(strip, frame, box), leftPx, topPx: 0, widthPx: placeWidthPx, heightPx },
          pictureFile,
        ),
      ),
      onTop(
        widthPx,
        hung
          .map(({ box, leftPx }) => pegs(box.width / mmPerPxOnLine(strip, frame), leftPx + placeWidthPx / 2))
          .join(''),
      ),
    ],
    output: { kind: 'webp' },
  };
  const webp = await runInWorker<ComposeRequest, Uint8Array>('compose', request, { timeoutMs: PAINT_LIMIT_MS });
  const { sha256 } = await pictureFiles().store(webp);
  return { sha256, mediaType: 'image/webp', widthPx, heightPx };
}

function onTop(widthPx: number, drawn: string): SvgLayer {
  const heightPx = HANG_PX + PEG.belowPx + 2;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}">${drawn}</svg>`;
  return { kind: 'svg', svg, leftPx: 0, topPx: 0 };
}

function pegs(garmentWidthPx: number, middlePx: number): string {
  const { widthPx, abovePx, belowPx } = PEG;
  const reachPx = Math.max(PEG_REACH * garmentWidthPx, widthPx);
  return [-reachPx, reachPx]
    .map((x) => middlePx + x - widthPx / 2)
    .map(
      (x) =>
        `<rect x="${x}" y="${HANG_PX - abovePx}" width="${widthPx}" height="${abovePx + belowPx}" fill="${WOOD}" stroke="${WOOD_INK}" stroke-width="1.5"/>`,
    )
    .join('');
}
