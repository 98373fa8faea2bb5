import { join } from 'node:path';
import sharp, { type Sharp } from 'sharp';

/** A full front at 300 px per inch: 15 × 18 in. */
export const WIDTH_PX = 4_500;
export const HEIGHT_PX = 5_400;

export const KINDS = ['flat', 'glow', 'photo'] as const;
export type Kind = (typeof KINDS)[number];

/** Draws the three kinds of picture into a folder as PNGs with alpha: hard-edged, with a soft glow, a photograph on white. */
export async function makePictures(folder: string): Promise<Record<Kind, string>> {
  const pathOf = (kind: Kind) => join(folder, `${kind}.png`);
  await drawn(flat()).toFile(pathOf('flat'));
  await drawn(glow()).toFile(pathOf('glow'));
  const raw = { width: WIDTH_PX, height: HEIGHT_PX, channels: 4 } as const;
  await sharp(photograph(), { raw }).png({ compressionLevel: 6 }).toFile(pathOf('photo'));
  return { flat: pathOf('flat'), glow: pathOf('glow'), photo: pathOf('photo') };
}

function drawn(shapes: string): Sharp {
  const size = `width="${WIDTH_PX}" height="${HEIGHT_PX}"`;
  return sharp(Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg" ${size}>${shapes}</svg>`)).png();
}

function flat(): string {
  const star = 'l60 120 130 20-95 92 24 130-119-62-119 62 24-130-95-92 130-20z';
  const stars = Array.from({ length: 60 }, (_, index) => {
    const [x, y] = [700 + (index % 10) * 320, 900 + Math.floor(index / 10) * 400];
    return `<path fill="#F2C14E" d="M${x} ${y}${star}"/>`;
  });
  const rings = Array.from({ length: 24 }, (_, index) => {
    const [x, y] = [500 + (index % 12) * 310, 4_700 + Math.floor(index / 12) * 320];
    return `<circle cx="${x}" cy="${y}" r="110" fill="none" stroke="#1B2A4A" stroke-width="${14 + index}"/>`;
  });
  return `<circle cx="2250" cy="2000" r="1700" fill="#1B2A4A"/><path d="M600 4200h3300v180h-3300z" fill="#C8102E"/>${[...stars, ...rings].join('')}`;
}

function glow(): string {
  return `<defs><filter id="soft" x="-50%" y="-50%" width="200%" height="200%"><feGaussianBlur stdDeviation="90"/></filter></defs>
    <circle filter="url(#soft)" cx="2250" cy="2400" r="1400" fill="#FF8800"/><circle cx="2250" cy="2400" r="1300" fill="#FFE000"/>
    <path d="M900 4500h2700v120H900zM900 4750h2700v40H900z" fill="#1B2A4A"/>`;
}

/** Smooth patches of colour with grain over them, in an oval on white. */
function photograph(): Uint8Array {
  const rgba = new Uint8Array(WIDTH_PX * HEIGHT_PX * 4).fill(255);
  const random = chance(20_261_125);
  const patches = 64;
  const lattices = Array.from({ length: 3 }, () => Float32Array.from({ length: patches * patches }, random));
  for (let y = 0; y < HEIGHT_PX; y += 1) {
    for (let x = 0; x < WIDTH_PX; x += 1) {
      if (((x - 2_250) / 1_800) ** 2 + ((y - 2_700) / 2_300) ** 2 > 1) continue;
      const [u, v] = [(x / WIDTH_PX) * (patches - 2), (y / HEIGHT_PX) * (patches - 2)];
      const at = Math.floor(v) * patches + Math.floor(u);
      for (const [channel, lattice] of lattices.entries()) {
        const upper = mixed(lattice[at], lattice[at + 1], u % 1);
        const lower = mixed(lattice[at + patches], lattice[at + patches + 1], u % 1);
        rgba[(y * WIDTH_PX + x) * 4 + channel] = mixed(upper, lower, v % 1) * 200 + random() * 16;
      }
    }
  }
  return rgba;
}

function mixed(one = 0, other = 0, share = 0): number {
  return one + (other - one) * share;
}

/** The same numbers from 0 to 1 at every run. Source: the constants of Numerical Recipes; from memory. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
