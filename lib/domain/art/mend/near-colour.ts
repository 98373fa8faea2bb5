import { ciede2000 } from '../colour/ciede2000';
import { labOfHex, labOfRgb } from '../colour/lab';

/**
 * Whether a colour, given by its channels, lies within so much ΔE00 of another. Asked of every pixel, so that each colour is
 * worked out once and remembered: a byte for each colour there can be.
 */
export function nearColour(hex: string, tolerance: number): (red: number, green: number, blue: number) => boolean {
  const wanted = labOfHex(hex);
  const known = new Uint8Array(1 << 24);
  return (red, green, blue) => {
    const colour = (red << 16) | (green << 8) | blue;
    if (known[colour] === 0) known[colour] = ciede2000(wanted, labOfRgb(red, green, blue)) <= tolerance ? 2 : 1;
    return known[colour] === 2;
  };
}
