import { type Box, boxAround } from '@/lib/domain/geometry/box';
import { applyMatrix, inverted, type Matrix } from '@/lib/domain/geometry/matrix';
import type { Pixels } from './quiet-sharp';

/** Where painted pixels go: four bytes each, not premultiplied, as everything here. */
export type Canvas = Pixels;

/** A clear canvas. */
export function clearCanvas(widthPx: number, heightPx: number): Canvas {
  return { rgba: new Uint8Array(widthPx * heightPx * 4), widthPx, heightPx };
}

/**
 * Paints a picture over the canvas where the map (picture px → canvas px, about 1 : 1 or larger) sends it. Each canvas
 * pixel takes the picture at its own middle; where the middles meet, pixels are copied as they are, otherwise the four
 * by four around are weighed (Catmull-Rom, Keys 1981 with a = -1/2), colours by their alpha. Outside the picture is clear.
 */
export function paintPicture(canvas: Canvas, picture: Pixels, toCanvas: Matrix): void {
  const covered = coveredPixels(canvas, picture, toCanvas);
  const [a, b, c, d, e, f] = inverted(toCanvas);
  const sample = makeSampler(picture);
  const colour = new Float64Array(4);
  for (let y = covered.top; y < covered.bottom; y += 1) {
    let u = a * (covered.left + 0.5) + c * (y + 0.5) + e - 0.5;
    let v = b * (covered.left + 0.5) + d * (y + 0.5) + f - 0.5;
    let at = (y * canvas.widthPx + covered.left) * 4;
    for (let x = covered.left; x < covered.right; x += 1) {
      sample(u, v, colour);
      paintPixel(canvas.rgba, at, colour);
      u += a;
      v += b;
      at += 4;
    }
  }
}

/** Paints pixels over the canvas as they are, their top left pixel at (left, top). */
export function paintPixels(canvas: Canvas, { rgba, widthPx, heightPx }: Pixels, left: number, top: number): void {
  const colour = new Float64Array(4);
  for (let y = Math.max(0, -top); y < Math.min(heightPx, canvas.heightPx - top); y += 1) {
    for (let x = Math.max(0, -left); x < Math.min(widthPx, canvas.widthPx - left); x += 1) {
      const from = (y * widthPx + x) * 4;
      for (let channel = 0; channel < 4; channel += 1) colour[channel] = rgba[from + channel] ?? 0;
      paintPixel(canvas.rgba, ((y + top) * canvas.widthPx + x + left) * 4, colour);
    }
  }
}

/** Source over destination (Porter and Duff 1984); colours straight, alpha 0 to 255. */
function paintPixel(onto: Uint8Array, at: number, colour: Float64Array): void {
  const alpha = colour[3] ?? 0;
  if (alpha <= 0) return;
  const under = onto[at + 3] ?? 0;
  if (alpha >= 255 || under === 0) {
    for (let channel = 0; channel < 4; channel += 1) onto[at + channel] = Math.round(colour[channel] ?? 0);
    return;
  }
  const underShare = (under * (255 - alpha)) / 255;
  const total = alpha + underShare;
  for (let channel = 0; channel < 3; channel += 1) {
    const mixed = ((colour[channel] ?? 0) * alpha + (onto[at + channel] ?? 0) * underShare) / total;
    onto[at + channel] = Math.round(mixed);
  }
  onto[at + 3] = Math.round(total);
}

function coveredPixels(canvas: Canvas, { widthPx, heightPx }: Pixels, toCanvas: Matrix) {
  const corners = [0, widthPx].flatMap((x) => [0, heightPx].map((y) => applyMatrix(toCanvas, { x, y })));
  const box: Box = boxAround(corners);
  return {
    left: Math.max(0, Math.floor(box.x)),
    top: Math.max(0, Math.floor(box.y)),
    right: Math.min(canvas.widthPx, Math.ceil(box.x + box.width)),
    bottom: Math.min(canvas.heightPx, Math.ceil(box.y + box.height)),
  };
}

/** Nearer than this to a pixel's middle, the pixel is taken as it is: no eye and no press tells 1/1000 px. */
const ON_THE_PIXEL = 1e-3;

type Sampler = (u: number, v: number, into: Float64Array) => void;

function makeSampler(picture: Pixels): Sampler {
  const across = new Float64Array(4);
  const down = new Float64Array(4);
  const sum = new Float64Array(4);
  return (u, v, into) => {
    const nearX = Math.round(u);
    const nearY = Math.round(v);
    if (Math.abs(u - nearX) < ON_THE_PIXEL && Math.abs(v - nearY) < ON_THE_PIXEL) {
      copyPixel(picture, nearX, nearY, into);
      return;
    }
    weights(u - Math.floor(u), across);
    weights(v - Math.floor(v), down);
    sum.fill(0);
    for (let row = 0; row < 4; row += 1) {
      addRow(picture, Math.floor(u) - 1, Math.floor(v) + row - 1, across, down[row] ?? 0, sum);
    }
    const alpha = sum[3] ?? 0;
    for (let channel = 0; channel < 3; channel += 1)
      into[channel] = alpha > 0 ? inByte((sum[channel] ?? 0) / alpha) : 0;
    into[3] = inByte(alpha);
  };
}

function copyPixel({ rgba, widthPx, heightPx }: Pixels, x: number, y: number, into: Float64Array): void {
  const inside = x >= 0 && y >= 0 && x < widthPx && y < heightPx;
  const at = (y * widthPx + x) * 4;
  for (let channel = 0; channel < 4; channel += 1) into[channel] = inside ? (rgba[at + channel] ?? 0) : 0;
}

/** Adds four pixels of one row, weighed; what lies outside the picture is clear and adds nothing. */
function addRow(
  { rgba, widthPx, heightPx }: Pixels,
  left: number,
  y: number,
  across: Float64Array,
  down: number,
  sum: Float64Array,
): void {
  if (y < 0 || y >= heightPx) return;
  const from = Math.max(0, -left);
  const to = Math.min(4, widthPx - left);
  for (let column = from; column < to; column += 1) {
    const at = (y * widthPx + left + column) * 4;
    const weight = down * (across[column] ?? 0) * (rgba[at + 3] ?? 0);
    sum[0] = (sum[0] ?? 0) + weight * (rgba[at] ?? 0);
    sum[1] = (sum[1] ?? 0) + weight * (rgba[at + 1] ?? 0);
    sum[2] = (sum[2] ?? 0) + weight * (rgba[at + 2] ?? 0);
    sum[3] = (sum[3] ?? 0) + weight;
  }
}

function weights(t: number, into: Float64Array): void {
  into[0] = ((-0.5 * t + 1) * t - 0.5) * t;
  into[1] = (1.5 * t - 2.5) * t * t + 1;
  into[2] = ((-1.5 * t + 2) * t + 0.5) * t;
  into[3] = (0.5 * t - 0.5) * t * t;
}

function inByte(value: number): number {
  return Math.min(255, Math.max(0, value));
}
