import type { Box } from '@/lib/domain/geometry/box';
import { composed, type Matrix, stretchOf } from '@/lib/domain/geometry/matrix';
import { withDeclaredSrgb } from './declare-srgb';
import { openPicture, openPixels, type Pixels, toPixels } from './quiet-sharp';
import { type Canvas, clearCanvas, paintPicture, paintPixels } from './resample';

/** Drawn shapes, as SVG whose own width and height are px of the canvas. */
export type SvgLayer = { readonly kind: 'svg'; readonly svg: string; readonly leftPx: number; readonly topPx: number };

/** A picture file laid down by a map from the px of the upright art to px of the canvas. */
export type PictureLayer = {
  readonly kind: 'picture';
  /** The art itself, or its small picture: either is the same art at another size. */
  readonly path: string;
  /** Size of the upright art that the map speaks of, px. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** The part of the art that is wanted, px of the art; all of it where absent. */
  readonly crop?: Box;
  readonly matrix: Matrix;
};

export type ComposeRequest = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly layers: readonly (SvgLayer | PictureLayer)[];
  readonly output:
    | { readonly kind: 'webp' }
    | { readonly kind: 'png' }
    /** A print file: sRGB declared, its density in pHYs. */
    | { readonly kind: 'printPng'; readonly pxPerInch: number };
};

/** Most pixels a canvas may have: a 24 × 30 in print at 300 px per inch is 65 million. Four bytes each. */
const MOST_CANVAS_PIXELS = 80_000_000;

/** Paints the layers in order onto a clear canvas and encodes it. Each picture file is unpacked once a size. */
export async function compose({ widthPx, heightPx, layers, output }: ComposeRequest): Promise<Uint8Array> {
  if (!(widthPx > 0 && heightPx > 0 && widthPx * heightPx <= MOST_CANVAS_PIXELS)) {
    throw new Error(`compose: a canvas of ${widthPx} × ${heightPx} px`);
  }
  const canvas = clearCanvas(widthPx, heightPx);
  const unpacked = new Map<string, Promise<Pixels>>();
  for (const layer of layers) {
    if (layer.kind === 'svg') paintPixels(canvas, await drawSvg(layer.svg), layer.leftPx, layer.topPx);
    else await paintPictureLayer(canvas, layer, unpacked);
  }
  return encode(canvas, output);
}

async function drawSvg(svg: string): Promise<Pixels> {
  return toPixels(openPicture(new TextEncoder().encode(svg)));
}

/**
 * Art larger than it is printed is first made smaller by whole-picture filtering, then set down by the exact map; art that
 * is smaller is set down as it is.
 */
async function paintPictureLayer(canvas: Canvas, layer: PictureLayer, unpacked: Map<string, Promise<Pixels>>) {
  const crop = layer.crop ?? { x: 0, y: 0, width: layer.widthPx, height: layer.heightPx };
  const stretch = stretchOf(layer.matrix);
  const size = {
    widthPx: Math.max(1, Math.round(crop.width * Math.min(1, stretch.x))),
    heightPx: Math.max(1, Math.round(crop.height * Math.min(1, stretch.y))),
  };
  const key = JSON.stringify([layer.path, crop, size]);
  const pixels = unpacked.get(key) ?? unpackAt(layer, crop, size);
  unpacked.set(key, pixels);
  const picture = await pixels;
  const toArt: Matrix = [crop.width / picture.widthPx, 0, 0, crop.height / picture.heightPx, crop.x, crop.y];
  paintPicture(canvas, picture, composed(layer.matrix, toArt));
}

async function unpackAt(layer: PictureLayer, crop: Box, size: { widthPx: number; heightPx: number }): Promise<Pixels> {
  const { width = 0, height = 0 } = await openPicture(layer.path).metadata();
  // A small picture is whole px of its own: the part of it that is wanted can only be cut from the art itself.
  const isArt = width === layer.widthPx && height === layer.heightPx;
  if (!isArt && layer.crop) throw new Error(`compose: ${layer.path} is ${width} × ${height} px and cannot be cropped`);
  const opened = openPicture(layer.path);
  const part = layer.crop
    ? opened.extract({ left: crop.x, top: crop.y, width: crop.width, height: crop.height })
    : opened;
  const smaller = size.widthPx < width || size.heightPx < height;
  const fits = smaller
    ? part.resize({
        width: Math.min(size.widthPx, width),
        height: Math.min(size.heightPx, height),
        fit: 'fill',
        kernel: 'cubic',
      })
    : part;
  return toPixels(fits);
}

async function encode(canvas: Canvas, output: ComposeRequest['output']): Promise<Uint8Array> {
  const pixels = openPixels(canvas);
  switch (output.kind) {
    case 'webp':
      return (await pixels.webp({ quality: 88, alphaQuality: 100, smartSubsample: true }).toUint8Array()).data;
    case 'png':
      return (await pixels.png({ compressionLevel: 6 }).toUint8Array()).data;
    case 'printPng': {
      const png = await pixels.png({ compressionLevel: 6 }).withDensity(output.pxPerInch).toUint8Array();
      return withDeclaredSrgb(png.data);
    }
  }
}
