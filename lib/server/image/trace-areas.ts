import { vectorizeRawSync } from '@neplex/vectorizer';
import { enlargedAreas } from '@/lib/domain/art/mend/enlarge-areas';
import { type FlatAreas, NO_INK } from '@/lib/domain/art/mend/flat-areas';
import { rgbOfHex } from '@/lib/domain/art/mend/mend-picture';

/** Flat areas as outlines: the inside of an SVG of so many units, and the colour that stands in it for no ink. */
export type TracedAreas = {
  readonly paths: string;
  readonly width: number;
  readonly height: number;
  readonly noInk: string;
};

// The tracer names these in constants that exist for its own compiler only.
const IN_COLOUR = 0;
const STACKED = 0;
const CURVES = 2;

/** Areas are followed at up to this many times their size, so that half-covered pixels say where an edge lies. */
const MOST_ENLARGED = 4;

/** As many pixels as are followed at once; a larger picture is followed at less than its size. */
const MOST_TRACED_PIXELS = 6_000_000;

/** Areas smaller than this many pixels of the picture are noise and become what lies round them. */
const LEAST_AREA_PX = 6;

/**
 * Follows the edges of flat areas and sets curves to them. Areas lie on each other like cut paper, so that no seam shows
 * between them.
 */
export function traceAreas(areas: FlatAreas, hexes: readonly string[]): TracedAreas {
  const pixels = areas.widthPx * areas.heightPx;
  const enlarged = Math.min(MOST_ENLARGED, Math.sqrt(MOST_TRACED_PIXELS / pixels));
  const width = Math.max(1, Math.round(areas.widthPx * enlarged));
  const height = Math.max(1, Math.round(areas.heightPx * enlarged));
  const noInk = unusedColour(hexes);
  const rgba = painted(enlargedAreas(areas, width, height), [...hexes], noInk);
  const svg = vectorizeRawSync(
    rgba,
    { width, height },
    {
      colorMode: IN_COLOUR,
      hierarchical: STACKED,
      mode: CURVES,
      filterSpeckle: Math.round(Math.sqrt(LEAST_AREA_PX) * enlarged),
      colorPrecision: 8,
      layerDifference: 0,
      cornerThreshold: 60,
      lengthThreshold: 4,
      maxIterations: 10,
      spliceThreshold: 45,
      pathPrecision: 2,
    },
  );
  const paths = svg.slice(svg.indexOf('<path'), svg.lastIndexOf('</svg>'));
  return { paths: inTheirColours(paths, [...hexes, noInk]), width, height, noInk };
}

/** The tracer gives an area the mean of its pixels, specks it took in among them: each gets the colour it was meant to have. */
function inTheirColours(paths: string, hexes: readonly string[]): string {
  const colours = hexes.map((hex) => ({ hex, rgb: rgbOfHex(hex) }));
  return paths.replace(/fill="(#[0-9A-Fa-f]{6})"/g, (_, found: string) => {
    const rgb = rgbOfHex(found);
    const apart = colours.map(({ rgb: own }) => Math.hypot(own[0] - rgb[0], own[1] - rgb[1], own[2] - rgb[2]));
    return `fill="${colours[apart.indexOf(Math.min(...apart))]?.hex ?? found}"`;
  });
}

/** A colour none of the others comes near. */
function unusedColour(hexes: readonly string[]): string {
  const colours = hexes.map(rgbOfHex);
  let [best, furthest] = ['', -1];
  for (let corner = 0; corner < 27; corner += 1) {
    const rgb = [corner % 3, Math.floor(corner / 3) % 3, Math.floor(corner / 9)].map((third) => third * 127);
    const nearest = Math.min(
      ...colours.map((colour) => Math.hypot(...colour.map((value, at) => value - (rgb[at] ?? 0)))),
    );
    const hex = `#${rgb.map((value) => value.toString(16).padStart(2, '0')).join('')}`.toUpperCase();
    if (nearest > furthest) [best, furthest] = [hex, nearest];
  }
  return best;
}

/** Opaque pixels of numbered areas, those without ink in a colour of their own. */
function painted(labels: Uint8Array, hexes: string[], noInk: string): Buffer {
  const rgba = Buffer.alloc(labels.length * 4, 255);
  const colours = new Uint8Array(256 * 3);
  for (const [label, hex] of [...hexes.entries(), [NO_INK, noInk] as const]) colours.set(rgbOfHex(hex), label * 3);
  for (let index = 0; index < labels.length; index += 1) {
    const from = (labels[index] ?? NO_INK) * 3;
    rgba[index * 4] = colours[from] ?? 0;
    rgba[index * 4 + 1] = colours[from + 1] ?? 0;
    rgba[index * 4 + 2] = colours[from + 2] ?? 0;
  }
  return rgba;
}
