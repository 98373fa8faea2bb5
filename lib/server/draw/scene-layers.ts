import type { Box } from '@/lib/domain/geometry/box';
import { composed, scaledAndMoved } from '@/lib/domain/geometry/matrix';
import type { DrawnShape, PhotographShape } from '@/lib/domain/layout/photograph-scene';
import type { ImageShape, Shape } from '@/lib/domain/layout/scene';
import type { PictureLayer, SvgLayer } from '../image/compose';
import { svgOfShapes } from './scene-svg';

/** Where on a canvas a scene is painted: the part of it in the box, into a rectangle of px. */
export type SceneFrame = {
  readonly box: Box;
  readonly leftPx: number;
  readonly topPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
};

/**
 * A scene as layers to be painted in the scene's own order: runs of drawn shapes as SVG, pictures from their files by the
 * scene's matrices. `pictureFile` gives the file a picture is painted from.
 */
export function sceneLayers(
  shapes: readonly DrawnShape[],
  frame: SceneFrame,
  pictureFile: (sha256: string) => string,
): (SvgLayer | PictureLayer)[] {
  const { box, leftPx, topPx, widthPx, heightPx } = frame;
  const pxPerMm = widthPx / box.width;
  const toCanvas = scaledAndMoved(pxPerMm, leftPx - box.x * pxPerMm, topPx - box.y * pxPerMm);
  return runsOf(shapes).map((run) =>
    run.kind === 'image'
      ? {
          kind: 'picture',
          path: pictureFile(run.image.sha256),
          widthPx: run.image.widthPx,
          heightPx: run.image.heightPx,
          matrix: composed(toCanvas, run.image.matrix),
        }
      : { kind: 'svg', svg: svgOfShapes(run.shapes, { box, widthPx, heightPx, href: () => null }), leftPx, topPx },
  );
}

type Run =
  | { readonly kind: 'drawn'; readonly shapes: Shape[] }
  | { readonly kind: 'image'; readonly image: ImageShape | PhotographShape };

function runsOf(shapes: readonly DrawnShape[]): Run[] {
  const runs: Run[] = [];
  for (const shape of shapes) {
    const last = runs.at(-1);
    if (shape.kind === 'image' || shape.kind === 'photograph') runs.push({ kind: 'image', image: shape });
    else if (last?.kind === 'drawn') last.shapes.push(shape);
    else runs.push({ kind: 'drawn', shapes: [shape] });
  }
  return runs;
}

/** The pictures a scene shows, each once. */
export function picturesIn(shapes: readonly DrawnShape[]): string[] {
  return [...new Set(shapes.flatMap((shape) => ('sha256' in shape ? [shape.sha256] : [])))];
}
