/** A colour in CIE L*a*b*, white D65: lightness 0 to 100, green to red, blue to yellow. */
export type Lab = { readonly l: number; readonly a: number; readonly b: number };

/** Reference white D65, chromaticity 0.3127, 0.3290, to which the primaries below add up. Source: IEC 61966-2-1. */
const WHITE = { x: 0.3127 / 0.329, y: 1, z: (1 - 0.3127 - 0.329) / 0.329 };

/** Source: CIE 015:2018, 8.2.1: (6/29)³ and (29/6)² / 3. */
const LINEAR_BELOW = (6 / 29) ** 3;
const LINEAR_SLOPE = (29 / 6) ** 2 / 3;

/** Light of each of the 256 values of a channel. Source: IEC 61966-2-1. */
const LIGHT = Float64Array.from({ length: 256 }, (_, value) => {
  const share = value / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
});

/** An sRGB colour, channels 0 to 255 and whole, in L*a*b* of white D65. */
export function labOfRgb(red: number, green: number, blue: number): Lab {
  const [r, g, b] = [LIGHT[red] ?? 0, LIGHT[green] ?? 0, LIGHT[blue] ?? 0];
  const x = curved((0.4123908 * r + 0.3575843 * g + 0.1804808 * b) / WHITE.x);
  const y = curved((0.212639 * r + 0.7151687 * g + 0.0721923 * b) / WHITE.y);
  const z = curved((0.0193308 * r + 0.1191948 * g + 0.9505322 * b) / WHITE.z);
  return { l: 116 * y - 16, a: 500 * (x - y), b: 200 * (y - z) };
}

/** A colour given as `#RRGGBB` in L*a*b* of white D65. */
export function labOfHex(hex: string): Lab {
  return labOfRgb(...rgbOfHex(hex));
}

/** The channels, 0 to 255, of a colour given as `#RRGGBB`. */
export function rgbOfHex(hex: string): [red: number, green: number, blue: number] {
  if (!/^#[0-9a-f]{6}$/i.test(hex)) throw new Error(`rgbOfHex: ${hex} is not a colour`);
  const rgb = Number.parseInt(hex.slice(1), 16);
  return [rgb >> 16, (rgb >> 8) & 255, rgb & 255];
}

/** `#RRGGBB` of an sRGB colour, channels 0 to 255 and whole. */
export function hexOfRgb(red: number, green: number, blue: number): string {
  return `#${((red << 16) | (green << 8) | blue).toString(16).padStart(6, '0').toUpperCase()}`;
}

function curved(share: number): number {
  return share > LINEAR_BELOW ? Math.cbrt(share) : LINEAR_SLOPE * share + 4 / 29;
}
