import { hexDifference } from '@/lib/domain/art/colour/ciede2000';
import { hexOfRgb } from '@/lib/domain/art/colour/lab';
import type { ClothColour } from '@/lib/domain/art/findings/vanishes';
import type { Call } from './drawn-in-page';
import type { Random } from './random';

/** A square a mark is drawn in, px. */
export type Place = { readonly x: number; readonly y: number; readonly size: number };

const FULL = 2 * Math.PI;

/** Any strong colour. */
export function anyColour(random: Random): string {
  const strong = [random.whole(0, 90), random.whole(20, 200), random.whole(150, 235)];
  const [red = 0, green = 0, blue = 0] = strong.sort(() => random.share() - 0.5);
  return hexOfRgb(red, green, blue);
}

/** A colour that is well told from all of these. */
export function colourFarFrom(random: Random, others: readonly string[], least = 30): string {
  for (let time = 0; time < 500; time += 1) {
    const hex = anyColour(random);
    if (others.every((other) => hexDifference(hex, other) >= least)) return hex;
  }
  return others.every((other) => hexDifference('#FFFFFF', other) >= 12) ? '#FFFFFF' : '#000000';
}

export function clothFarFrom(random: Random, others: readonly string[]): ClothColour {
  return { name: 'Cloth', hex: colourFarFrom(random, others) };
}

/**
 * A mark of flat colours with edges as a browser smooths them, nothing of it or between it thinner than a tenth of its
 * size.
 */
export function boldMark(random: Random, { x, y, size }: Place, colours: readonly string[]): Call[] {
  const [first = '#000000', second = first] = colours;
  const [cx, cy] = [x + size / 2, y + size / 2];
  const disc = (atX: number, atY: number, radius: number, colour: string): Call[] => [
    ['fillStyle', colour],
    ['beginPath'],
    ['arc', atX, atY, radius, 0, FULL],
    ['fill'],
  ];
  switch (random.whole(0, 5)) {
    case 0:
      // A ring with a disc in it.
      return [
        ['strokeStyle', first],
        ['lineWidth', size * 0.14],
        ['beginPath'],
        ['arc', cx, cy, size * 0.43, 0, FULL],
        ['stroke'],
        ...disc(cx, cy, size * 0.2, second),
      ];
    case 1:
      // Three slanted bars.
      return [
        ['save'],
        ['translate', cx, cy],
        ['rotate', random.between(-0.5, 0.5)],
        ...[-0.32, -0.09, 0.14].flatMap((top, index): Call[] => [
          ['fillStyle', index === 1 ? second : first],
          ['fillRect', -size * 0.4, top * size, size * 0.8, size * 0.12],
        ]),
        ['restore'],
      ];
    case 2:
      // A shield: straight edges, right angles, a blunt foot, a badge of the second colour on it.
      return [
        ['fillStyle', first],
        ['beginPath'],
        ['moveTo', x, y],
        ['lineTo', x + size, y],
        ['lineTo', x + size, y + size * 0.55],
        ['quadraticCurveTo', x + size, y + size * 0.9, cx, y + size],
        ['quadraticCurveTo', x, y + size * 0.9, x, y + size * 0.55],
        ['closePath'],
        ['fill'],
        ...disc(cx, y + size * 0.42, size * 0.22, second),
      ];
    case 3:
      // A thick wave with round ends over a bar.
      return [
        ['strokeStyle', first],
        ['lineWidth', size * 0.13],
        ['lineCap', 'round'],
        ['beginPath'],
        ['moveTo', x + size * 0.1, y + size * 0.4],
        [
          'bezierCurveTo',
          x + size * 0.35,
          y - size * 0.1,
          x + size * 0.6,
          y + size * 0.8,
          x + size * 0.9,
          y + size * 0.25,
        ],
        ['stroke'],
        ['fillStyle', second],
        ['fillRect', x + size * 0.05, y + size * 0.8, size * 0.9, size * 0.15],
      ];
    case 4:
      // A triangle with sharp corners, and two discs.
      return [
        ['fillStyle', first],
        ['beginPath'],
        ['moveTo', cx, y],
        ['lineTo', x + size * 0.85, y + size * 0.6],
        ['lineTo', x + size * 0.15, y + size * 0.6],
        ['closePath'],
        ['fill'],
        ...disc(x + size * 0.2, y + size * 0.86, size * 0.12, second),
        ...disc(x + size * 0.8, y + size * 0.86, size * 0.12, second),
      ];
    default:
      // Blocks of a heavy letter.
      return [
        ['fillStyle', first],
        ['fillRect', x, y, size * 0.24, size],
        ['fillRect', x + size * 0.72, y, size * 0.24, size],
        ['fillStyle', second],
        ['fillRect', x, y + size * 0.4, size * 0.96, size * 0.2],
      ];
  }
}
