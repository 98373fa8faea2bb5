import type { ArtRef } from '@/lib/domain/art/art-ref';
import { type Box, boxAround, boxAroundBoxes, grownBox } from '@/lib/domain/geometry/box';
import { applyMatrix, composed, scaledAndMoved } from '@/lib/domain/geometry/matrix';
import { pathFromData } from '@/lib/domain/geometry/path-data';
import type { Point } from '@/lib/domain/geometry/point';
import type { ImageShape, PrintShape, Scene, Shape } from '@/lib/domain/layout/scene';
import { inkPoints } from '@/lib/domain/lettering/ink-points';
import { type Micrometres, UM_PER_INCH, UM_PER_MM } from '@/lib/domain/measure/length';
import { artFiles } from '../files/store';
import type { ComposeRequest, PictureLayer, SvgLayer } from '../image/compose';
import { runInWorker } from '../workers/pool';
import { svgOfShapes } from './scene-svg';

/** Density of print files, px per inch; written as 11 811 px per metre (PNG Third Edition, 11.3.4.3). */
export const PRINT_PX_PER_INCH = 300;
const PX_PER_MM = (PRINT_PX_PER_INCH * UM_PER_MM) / UM_PER_INCH;

/** How long a print file may take to be made: the largest transfers are resampled from tens of millions of pixels. */
const PRINT_LIMIT_MS = 180_000;

/** Part of a pixel that a print file may fall short of the ink it holds: far under what a press can place. */
const ROUNDING_PX = 1e-3;

/** What of a picture prints, as the layout names it. */
export type PrintedArt = Pick<ArtRef, 'sha256' | 'inkBox' | 'inkHull'>;

/** A transparent sRGB PNG at 300 px per inch. */
export type PrintFile = { readonly png: Uint8Array; readonly widthPx: number; readonly heightPx: number };

/**
 * The print file of one print: the box of its turned ink, made from the art's own pixels by the scene's matrix. Art that
 * is exactly as fine as the file and not turned is copied pixel by pixel; lettering is drawn from its outlines.
 */
export async function printPng(print: PrintShape, art: readonly PrintedArt[]): Promise<PrintFile> {
  const box = inkBoxOf(print, art);
  return paintPrints([print], art, { x: box.x, y: box.y }, box);
}

/** All prints of one side of a garment at their true places, in one file; the origin is its upper left corner on the flat. */
export type SidePrintFile = PrintFile & { readonly originXUm: Micrometres; readonly originYUm: Micrometres };

/** The print file of a whole side, or null where nothing is printed on it. */
export async function sidePng(scene: Pick<Scene, 'shapes'>, art: readonly PrintedArt[]): Promise<SidePrintFile | null> {
  const prints = scene.shapes.filter(isPrint);
  if (prints.length === 0) return null;
  const box = boxAroundBoxes(prints.map((print) => inkBoxOf(print, art)));
  const originXUm = Math.floor(box.x * UM_PER_MM);
  const originYUm = Math.floor(box.y * UM_PER_MM);
  const origin = { x: originXUm / UM_PER_MM, y: originYUm / UM_PER_MM };
  return { ...(await paintPrints(prints, art, origin, box)), originXUm, originYUm };
}

/** Whether a shape of a scene is a print, and not a word on a tape. */
export function isPrint(shape: Shape): shape is PrintShape {
  return shape.kind === 'image' || (shape.kind === 'glyphs' && shape.printId !== undefined);
}

/** The box round the turned ink of a print, mm; the line round letters is ink. */
function inkBoxOf(print: PrintShape, art: readonly PrintedArt[]): Box {
  if (print.kind === 'image') {
    return boxAround(artOf(print, art).inkHull.map(([x, y]) => applyMatrix(print.matrix, { x, y })));
  }
  return grownBox(boxAround(inkPoints(pathFromData(print.d))), print.outline?.widthMm ?? 0);
}

function artOf(image: ImageShape, art: readonly PrintedArt[]): PrintedArt {
  const found = art.find(({ sha256 }) => sha256 === image.sha256);
  if (!found) throw new Error(`print ${image.printId} shows ${image.sha256}, which the layout does not name`);
  return found;
}

async function paintPrints(
  prints: readonly PrintShape[],
  art: readonly PrintedArt[],
  origin: Point,
  box: Box,
): Promise<PrintFile> {
  const toFile = scaledAndMoved(PX_PER_MM, -origin.x * PX_PER_MM, -origin.y * PX_PER_MM);
  const widthPx = wholePx(box.x + box.width - origin.x);
  const heightPx = wholePx(box.y + box.height - origin.y);
  const shown = { ...origin, width: widthPx / PX_PER_MM, height: heightPx / PX_PER_MM };
  const layers = prints.map((print): PictureLayer | SvgLayer => {
    if (print.kind === 'glyphs') {
      const svg = svgOfShapes([print], { box: shown, widthPx, heightPx, href: () => null });
      return { kind: 'svg', svg, leftPx: 0, topPx: 0 };
    }
    return {
      kind: 'picture',
      path: artFiles().pathOf(print.sha256),
      widthPx: print.widthPx,
      heightPx: print.heightPx,
      crop: artOf(print, art).inkBox,
      matrix: composed(toFile, print.matrix),
    };
  });
  const request: ComposeRequest = {
    widthPx,
    heightPx,
    layers,
    output: { kind: 'printPng', pxPerInch: PRINT_PX_PER_INCH },
  };
  const png = await runInWorker<ComposeRequest, Uint8Array>('compose', request, { timeoutMs: PRINT_LIMIT_MS });
  return { png, widthPx, heightPx };
}

function wholePx(mm: number): number {
  return Math.max(1, Math.ceil(mm * PX_PER_MM - ROUNDING_PX));
}
