import { flatAreas } from '@/lib/domain/art/mend/flat-areas';
import { rgbOfHex } from '@/lib/domain/art/mend/mend-picture';
import { openPicture, type Pixels, toPixels } from './quiet-sharp';
import { type TracedAreas, traceAreas } from './trace-areas';

/** Each way, a pixel of the result is the mean of so many points, each of one area: smooth edges and no mixed seams. */
const POINTS = 3;

/** The longest side that is drawn at once, and the most pixels: drawn strip by strip, memory stays small. */
const LONGEST_DRAWN = 32_000;
const MOST_DRAWN_PIXELS = 16_000_000;

/**
 * The picture drawn anew as flat areas of these colours, `scale` times as large: traced, set to curves and painted. What
 * comes of it shows what the picture showed and has none of its pixels.
 */
export async function redraw(picture: Pixels, hexes: readonly string[], scale: number): Promise<Pixels> {
  const traced = traceAreas(flatAreas(picture, hexes), hexes);
  const [widthPx, heightPx] = [picture.widthPx * scale, picture.heightPx * scale];
  const points = Math.max(1, Math.min(POINTS, Math.floor(LONGEST_DRAWN / widthPx)));
  const stripPx = Math.max(1, Math.floor(MOST_DRAWN_PIXELS / (widthPx * points * points)));
  const redrawn = { rgba: new Uint8Array(widthPx * heightPx * 4), widthPx, heightPx };
  const noInk = rgbOfHex(traced.noInk);
  for (let top = 0; top < heightPx; top += stripPx) {
    const rows = Math.min(stripPx, heightPx - top);
    const strip = await drawStrip(traced, { widthPx, heightPx, top, rows, points });
    meanOfPoints(strip, points, noInk, redrawn.rgba.subarray(top * widthPx * 4, (top + rows) * widthPx * 4));
  }
  return redrawn;
}

type Strip = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly top: number;
  readonly rows: number;
  readonly points: number;
};

/** Some rows of the redrawing with every point in the colour of one area, none of them mixed. */
function drawStrip({ paths, width, height, noInk }: TracedAreas, strip: Strip): Promise<Pixels> {
  const { widthPx, heightPx, top, rows, points } = strip;
  const unit = height / heightPx;
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx * points}" height="${rows * points}" ` +
    `viewBox="0 ${top * unit} ${width} ${rows * unit}" preserveAspectRatio="none" shape-rendering="crispEdges">` +
    `<rect y="${top * unit}" width="${width}" height="${rows * unit}" fill="${noInk}"/>${paths}</svg>`;
  return toPixels(openPicture(new TextEncoder().encode(svg), { unlimited: true }));
}

/** Each pixel of `onto` from its points: alpha is the share of those with ink, colour the mean of those. */
function meanOfPoints(drawn: Pixels, points: number, noInk: readonly number[], onto: Uint8Array): void {
  const widthPx = drawn.widthPx / points;
  const [noRed, noGreen, noBlue] = noInk;
  for (let at = 0; at < onto.length; at += 4) {
    const pixel = at / 4;
    const x = pixel % widthPx;
    const y = (pixel - x) / widthPx;
    let [count, red, green, blue] = [0, 0, 0, 0];
    for (let down = 0; down < points; down += 1) {
      let from = ((y * points + down) * drawn.widthPx + x * points) * 4;
      for (let across = 0; across < points; across += 1, from += 4) {
        const [r, g, b] = [drawn.rgba[from] ?? 0, drawn.rgba[from + 1] ?? 0, drawn.rgba[from + 2] ?? 0];
        if (r === noRed && g === noGreen && b === noBlue) continue;
        count += 1;
        red += r;
        green += g;
        blue += b;
      }
    }
    if (count === 0) continue;
    onto[at] = Math.round(red / count);
    onto[at + 1] = Math.round(green / count);
    onto[at + 2] = Math.round(blue / count);
    onto[at + 3] = Math.round((count * 255) / (points * points));
  }
}
