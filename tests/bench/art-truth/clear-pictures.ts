import { hexDifference } from '@/lib/domain/art/colour/ciede2000';
import { hexOfRgb, labOfHex } from '@/lib/domain/art/colour/lab';
import type { Call, Drawing } from './drawn-in-page';
import { anyColour, boldMark, clothFarFrom, colourFarFrom } from './marks';
import type { Random } from './random';
import { atPxPerInch, type TruthPicture } from './truth-picture';

// Pictures on a clear ground.

type Base = { readonly drawing: Drawing; readonly colours: readonly string[]; readonly size: number };

function markPicture(random: Random, marginShare = 0.03): Base {
  const size = random.whole(420, 620);
  const side = Math.round(size / (1 - 2 * marginShare));
  const colours = [anyColour(random)];
  if (random.share() < 0.5) colours.push(colourFarFrom(random, colours));
  const at = (side - size) / 2;
  return {
    drawing: { widthPx: side, heightPx: side, calls: boldMark(random, { x: at, y: at, size }, colours) },
    colours,
    size,
  };
}

function sharp(random: Random): number {
  return atPxPerInch(random.between(330, 480));
}

/** Nothing the matter with it. */
export function cleanPicture(random: Random): TruthPicture {
  const { drawing, colours } = markPicture(random);
  return {
    family: 'clean',
    drawing,
    umPerPx: sharp(random),
    cloths: [clothFarFrom(random, colours)],
    must: [],
    // The marks differ in how much of their square they fill.
    either: ['emptyMargin'],
  };
}

/** Too few pixels for its inches, or just enough. */
export function resolutionPicture(random: Random, isFault: boolean): TruthPicture {
  const { drawing, colours } = markPicture(random);
  const pxPerInch = isFault ? random.between(90, 294) : random.between(304, 330);
  return {
    family: 'resolution',
    drawing,
    umPerPx: atPxPerInch(pxPerInch),
    cloths: [clothFarFrom(random, colours)],
    must: isFault ? ['blurry'] : [],
    either: ['emptyMargin'],
  };
}

/** A glow, a shadow, a fade or a half-clear layer; or edges as smooth as a browser, or a slight softening, makes them. */
export function hazePicture(random: Random, isFault: boolean): TruthPicture {
  const size = random.whole(380, 480);
  const side = size + 260;
  const colours = [anyColour(random)];
  const [first = '#000000'] = colours;
  const mark = boldMark(random, { x: 130, y: 130, size }, colours);
  return {
    family: 'haze',
    drawing: {
      widthPx: side,
      heightPx: side,
      calls: isFault ? hazed(random, mark, first, side) : softened(random, mark),
    },
    umPerPx: sharp(random),
    cloths: [clothFarFrom(random, colours)],
    must: isFault ? ['haze'] : [],
    // Where a half-clear disc ends beside a corner of the mark there is a wedge of any width.
    either: isFault ? ['emptyMargin', 'thinStrokes', 'thinGaps'] : ['emptyMargin'],
  };
}

function hazed(random: Random, mark: readonly Call[], colour: string, side: number): Call[] {
  const radius = random.between(12, 60);
  switch (random.whole(0, 3)) {
    case 0:
      return [['shadowColor', colour], ['shadowBlur', radius * 2], ...mark];
    case 1:
      return [
        ['shadowColor', 'rgba(0, 0, 0, 0.6)'],
        ['shadowBlur', radius],
        ['shadowOffsetX', radius / 2],
        ['shadowOffsetY', radius / 2],
        ...mark,
      ];
    case 2:
      // The foot of it fades away.
      return [
        ...mark,
        ['globalCompositeOperation', 'destination-out'],
        ...Array.from({ length: 40 }, (_, step): Call[] => [
          ['fillStyle', `rgba(0, 0, 0, ${0.03 + step * 0.012})`],
          ['fillRect', 0, side * 0.5 + step * 6, side, 6],
        ]).flat(),
        ['globalCompositeOperation', 'source-over'],
      ];
    default:
      // A half-clear disc lies behind it.
      return [
        ['globalAlpha', random.between(0.25, 0.6)],
        ['fillStyle', colour],
        ['beginPath'],
        ['arc', side / 2, side / 2, side * 0.42, 0, 2 * Math.PI],
        ['fill'],
        ['globalAlpha', 1],
        ...mark,
      ];
  }
}

function softened(random: Random, mark: readonly Call[]): Call[] {
  return random.share() < 0.5 ? [...mark] : [['filter', `blur(${random.between(0.3, 0.6).toFixed(2)}px)`], ...mark];
}

/** Stray dots of one to three pixels beside it, or dots that belong to it. */
export function speckPicture(random: Random, isFault: boolean): TruthPicture {
  const size = random.whole(380, 480);
  const side = size + 240;
  const colours = [anyColour(random)];
  const [colour = '#000000'] = colours;
  const dots = random.whole(1, 12);
  const stray = Array.from({ length: dots }, (): Call => {
    const [along, off] = [random.between(10, side - 10), random.between(8, 70)];
    const px = random.whole(1, 3);
    return random.share() < 0.5
      ? ['fillRect', Math.round(along), Math.round(off), px, px]
      : ['fillRect', Math.round(off), Math.round(along), px, px];
  });
  const meant = Array.from({ length: dots }, (_, index): Call[] => [
    ['beginPath'],
    ['arc', 50 + (index * (side - 100)) / 12, 55, random.between(8, 12), 0, 2 * Math.PI],
    ['fill'],
  ]).flat();
  return {
    family: 'specks',
    drawing: {
      widthPx: side,
      heightPx: side,
      calls: [
        ...boldMark(random, { x: 120, y: 120, size }, colours),
        ['fillStyle', colour],
        ...(isFault ? stray : meant),
      ],
    },
    umPerPx: sharp(random),
    cloths: [clothFarFrom(random, colours)],
    must: isFault ? ['specks'] : [],
    // Specks are thin, and may lie near each other; they reach out of the mark's own box.
    either: isFault ? ['emptyMargin', 'thinStrokes', 'thinGaps'] : ['emptyMargin'],
  };
}

/** Ink over part of the picture only. */
export function marginPicture(random: Random, isFault: boolean): TruthPicture {
  const size = random.whole(380, 480);
  const room = isFault ? random.between(0.16, 0.8) : random.between(0.01, 0.08);
  const side = Math.round(size / (1 - room));
  const colours = [anyColour(random)];
  const [colour = '#000000'] = colours;
  const at = random.whole(0, side - size);
  return {
    family: 'margin',
    drawing: {
      widthPx: side,
      heightPx: side,
      calls: [
        ['fillStyle', colour],
        ['beginPath'],
        ['roundRect', at, at, size, size, size / random.between(3, 9)],
        ['fill'],
      ],
    },
    umPerPx: sharp(random),
    cloths: [clothFarFrom(random, colours)],
    must: isFault ? ['emptyMargin'] : [],
  };
}

/** A large share of its ink near to one of the cloths, or further off, or a small share near. */
export function vanishingPicture(random: Random, isFault: boolean): TruthPicture {
  const size = random.whole(420, 560);
  const [first, second] = [anyColour(random), anyColour(random)];
  const smallShare = !isFault && random.share() < 0.4;
  const cloth = smallShare
    ? nearTo(random, second, 2, 7)
    : isFault
      ? nearTo(random, first, 2, 8.5)
      : nearTo(random, first, 11.5, 20);
  const far = smallShare && hexDifference(cloth, first) < 12 ? clothFarFrom(random, [second]).hex : first;
  const band = smallShare ? 0.07 : random.between(0.12, 0.4);
  return {
    family: 'vanishes',
    drawing: {
      widthPx: size,
      heightPx: size,
      calls: [
        ['fillStyle', far],
        ['beginPath'],
        ['roundRect', 0, 0, size, size, size / 5],
        ['fill'],
        ['fillStyle', smallShare ? second : first],
        ['fillRect', size * 0.2, size * 0.4, size * 0.6, size * band],
      ],
    },
    umPerPx: sharp(random),
    cloths: [clothFarFrom(random, [first, second, far]), { name: 'The cloth', hex: cloth }],
    must: isFault ? ['vanishes'] : [],
  };
}

/** A colour that lies so far from another, ΔE00. */
function nearTo(random: Random, hex: string, least: number, most: number): string {
  const { l } = labOfHex(hex);
  const [red, green, blue] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  for (let time = 0; time < 4_000; time += 1) {
    const reach = 12 + most * 3;
    const step = () => random.between(-reach, reach);
    const moved = [red, green, blue].map((value) => Math.round(Math.min(255, Math.max(0, (value ?? 0) + step()))));
    const near = hexOfRgb(moved[0] ?? 0, moved[1] ?? 0, moved[2] ?? 0);
    const far = hexDifference(hex, near);
    if (far >= least && far <= most) return near;
  }
  throw new Error(`no colour ${least} to ${most} from ${hex} (lightness ${l})`);
}

/** Wider or taller than the press takes. */
export function largePicture(random: Random, isFault: boolean): TruthPicture {
  const [widthPx, heightPx] = random.oneOf([
    [800, 800],
    [900, 450],
    [400, 800],
  ] as const);
  const colour = anyColour(random);
  const most = Math.min(16 / widthPx, 20 / heightPx);
  const inchesPerPx = most * (isFault ? random.between(1.02, 1.4) : random.between(0.7, 0.98));
  return {
    family: 'large',
    drawing: {
      widthPx,
      heightPx,
      calls: [['fillStyle', colour], ['beginPath'], ['roundRect', 0, 0, widthPx, heightPx, 120], ['fill']],
    },
    umPerPx: inchesPerPx * 25_400,
    cloths: [clothFarFrom(random, [colour])],
    must: isFault ? ['tooLarge', 'blurry'] : ['blurry'],
  };
}
