import { hexOfRgb } from '@/lib/domain/art/colour/lab';
import type { Call, Drawing } from './drawn-in-page';
import { anyColour, boldMark, clothFarFrom, colourFarFrom } from './marks';
import type { Random } from './random';
import { atPxPerInch, type TruthPicture } from './truth-picture';

// Pictures without a clear pixel.

function sharp(random: Random): number {
  return atPxPerInch(random.between(340, 480));
}

function backingColour(random: Random): string {
  const shade = random.whole(0, 5);
  if (shade <= 2) return '#FFFFFF';
  if (shade === 3) return '#000000';
  if (shade === 4) return hexOfRgb(random.whole(236, 250), random.whole(236, 250), random.whole(230, 248));
  return anyColour(random);
}

function ground(hex: string, widthPx: number, heightPx: number): Call[] {
  return [
    ['fillStyle', hex],
    ['fillRect', 0, 0, widthPx, heightPx],
  ];
}

/** A mark on one flat colour, as a clean file or as a JPEG; or a mark on a clear ground. */
export function backedPicture(random: Random, isFault: boolean): TruthPicture {
  const size = random.whole(380, 520);
  const room = random.whole(30, 140);
  const [widthPx, heightPx] = [size + 2 * room, size + 2 * random.whole(20, 120)];
  const backing = backingColour(random);
  const colours = [colourFarFrom(random, [backing])];
  if (random.share() < 0.4) colours.push(colourFarFrom(random, [backing, ...colours]));
  const mark = boldMark(random, { x: room, y: (heightPx - size) / 2, size }, colours);
  const isPhotographed = random.share() < 0.25;
  const calls = isFault ? [...ground(backing, widthPx, heightPx), ...mark] : mark;
  return {
    family: 'backing',
    drawing: {
      widthPx,
      heightPx,
      calls,
      ...(isFault && random.share() < 0.6 ? { jpegQuality: random.between(0.6, 0.95) } : {}),
      // A thing photographed before a plain wall.
      ...(isFault && isPhotographed
        ? { photographs: [{ at: calls.length, seed: random.seed(), box: [room + 40, 80, size - 80, heightPx - 160] }] }
        : {}),
    },
    umPerPx: sharp(random),
    cloths: [clothFarFrom(random, [backing, ...colours])],
    must: isFault ? ['whiteBox'] : [],
    // A photograph has any colour; what a JPEG leaves round a mark is not told apart from it by everybody.
    either: isFault && isPhotographed ? ['vanishes', 'thinGaps'] : ['emptyMargin'],
  };
}

/** A photograph, or a drawing that fills its rectangle: nothing to knock out. */
export function rectanglePicture(random: Random): TruthPicture {
  const [widthPx, heightPx] = [random.whole(560, 820), random.whole(480, 720)];
  const { drawing, ofPhotograph } = rectangle(random, widthPx, heightPx);
  return {
    family: 'rectangle',
    drawing: random.share() < 0.5 ? { ...drawing, jpegQuality: random.between(0.7, 0.95) } : drawing,
    umPerPx: atPxPerInch(random.between(380, 520)),
    cloths: [],
    must: ['wholeRectangle'],
    either: ofPhotograph ? [] : ['vanishes'],
  };
}

function rectangle(random: Random, widthPx: number, heightPx: number): { drawing: Drawing; ofPhotograph: boolean } {
  const all = { widthPx, heightPx };
  const photograph = { at: 0, seed: random.seed(), box: [0, 0, widthPx, heightPx] };
  switch (random.whole(0, 4)) {
    case 0:
    case 1:
      return { drawing: { ...all, calls: [], photographs: [photograph] }, ofPhotograph: true };
    case 2: {
      // A sky, flat but for its fading, over a landscape.
      const sky = Array.from({ length: 60 }, (_, row): Call[] => [
        ['fillStyle', hexOfRgb(110 + row, 150 + row, 225)],
        ['fillRect', 0, (row * heightPx * 0.4) / 60, widthPx, (heightPx * 0.4) / 60 + 1],
      ]).flat();
      return { drawing: { ...all, calls: sky, photographs: [photograph] }, ofPhotograph: true };
    }
    case 3: {
      // A flag of three equal stripes.
      const colours = [anyColour(random)];
      colours.push(colourFarFrom(random, colours));
      colours.push(colourFarFrom(random, colours));
      const stripes = colours.flatMap((colour, index): Call[] => [
        ['fillStyle', colour],
        ['fillRect', 0, (index * heightPx) / 3, widthPx, heightPx / 3 + 1],
      ]);
      return { drawing: { ...all, calls: stripes }, ofPhotograph: false };
    }
    default: {
      // Checks from edge to edge.
      const [one, other] = [anyColour(random), '#F2EFE6'];
      const cell = random.whole(60, 110);
      const checks = Array.from({ length: 14 * 14 }, (_, index): Call[] => {
        const [column, row] = [index % 14, Math.floor(index / 14)];
        return [
          ['fillStyle', (column + row) % 2 === 0 ? one : other],
          ['fillRect', column * cell, row * cell, cell, cell],
        ];
      }).flat();
      return { drawing: { ...all, calls: checks }, ofPhotograph: false };
    }
  }
}

/** A screenshot with its bars, a picture between black bars, a card on a table; or art whose own stripe is no bar. */
export function junkPicture(random: Random, isFault: boolean): TruthPicture {
  const [widthPx, heightPx] = [random.whole(540, 640), random.whole(820, 960)];
  const backing = random.oneOf(['#FFFFFF', '#F4F4F2', '#101114']);
  const colour = colourFarFrom(random, [backing]);
  const size = widthPx * 0.6;
  const mark = boldMark(random, { x: widthPx * 0.2, y: heightPx / 2 - size / 2, size }, [colour]);
  const common = { umPerPx: sharp(random), cloths: [clothFarFrom(random, [backing, colour])] };
  const jpeg = random.share() < 0.5 ? { jpegQuality: random.between(0.75, 0.95) } : {};
  if (!isFault) {
    // A label of the art itself runs across, short of the edges.
    const inset = widthPx * random.between(0.08, 0.15);
    const label: Call[] = [
      ['fillStyle', colour],
      ['fillRect', inset, heightPx * 0.08, widthPx - 2 * inset, heightPx * 0.09],
    ];
    return {
      family: 'junk',
      drawing: { widthPx, heightPx, calls: [...ground(backing, widthPx, heightPx), ...mark, ...label], ...jpeg },
      ...common,
      must: ['whiteBox'],
    };
  }
  const bar = colourFarFrom(random, [backing, colour], 15);
  const [top, foot] = [
    Math.round(heightPx * random.between(0.04, 0.1)),
    Math.round(heightPx * random.between(0.05, 0.12)),
  ];
  const kind = random.whole(0, 2);
  if (kind === 0) {
    // A telephone's status bar with a few signs in it, and a bar of buttons.
    const signs = [0.06, 0.12, 0.8, 0.9].flatMap((x): Call[] => [
      ['fillStyle', '#FFFFFF'],
      ['fillRect', x * widthPx, top * 0.3, 18, top * 0.4],
    ]);
    const bars: Call[] = [
      ['fillStyle', bar],
      ['fillRect', 0, 0, widthPx, top],
      ['fillRect', 0, heightPx - foot, widthPx, foot],
      ...signs,
    ];
    return {
      family: 'junk',
      drawing: { widthPx, heightPx, calls: [...ground(backing, widthPx, heightPx), ...mark, ...bars], ...jpeg },
      ...common,
      must: ['junk'],
      either: ['whiteBox', 'wholeRectangle', 'thinStrokes', 'thinGaps', 'specks', 'vanishes'],
    };
  }
  if (kind === 1) {
    // A photograph between black bars.
    const isAbove = random.share() < 0.5;
    const box = isAbove ? [0, top * 2, widthPx, heightPx - top * 4] : [top, 0, widthPx - top * 2, heightPx];
    const calls = ground('#000000', widthPx, heightPx);
    return {
      family: 'junk',
      drawing: {
        widthPx,
        heightPx,
        calls,
        photographs: [{ at: calls.length, seed: random.seed(), box: box.map(Math.round) }],
        ...jpeg,
      },
      umPerPx: sharp(random),
      cloths: [],
      must: ['junk'],
      either: ['whiteBox', 'wholeRectangle', 'thinStrokes', 'thinGaps'],
    };
  }
  // A card scanned on a grey lid.
  const rim = random.whole(14, 60);
  return {
    family: 'junk',
    drawing: {
      widthPx,
      heightPx,
      calls: [
        ...ground(hexOfRgb(120, 122, 126), widthPx, heightPx),
        ['fillStyle', '#FDFDFB'],
        ['fillRect', rim, rim, widthPx - 2 * rim, heightPx - 2 * rim],
        ...boldMark(random, { x: widthPx * 0.2, y: heightPx / 2 - size / 2, size }, [
          colourFarFrom(random, ['#FDFDFB', '#7A7C7E']),
        ]),
      ],
      ...jpeg,
    },
    umPerPx: sharp(random),
    cloths: [],
    must: ['junk'],
    either: ['whiteBox', 'wholeRectangle', 'thinStrokes', 'thinGaps'],
  };
}

/** A small picture made larger, so that it looks sharp by its pixels alone; or one that was drawn at its size. */
export function enlargedPicture(random: Random, isFault: boolean): TruthPicture {
  const times = random.oneOf([2, 2.5, 3, 4, 5, 6]);
  const isClear = random.share() < 0.4;
  const isPhotograph = !isClear && random.share() < 0.35;
  const side = isFault ? Math.round(random.between(700, 900) / times) : random.whole(600, 800);
  const backing = backingColour(random);
  const colours = [colourFarFrom(random, [backing])];
  const size = side * 0.66;
  // Straight edges along the rows of pixels lose nothing when they are enlarged, so the mark lies aslant.
  const mark: Call[] = [
    ['translate', side / 2, side / 2],
    ['rotate', random.between(0.1, 0.6)],
    ...boldMark(random, { x: -size / 2, y: -size / 2, size }, colours),
    ['resetTransform'],
  ];
  const drawing: Drawing = isPhotograph
    ? {
        widthPx: side,
        heightPx: side,
        calls: [],
        photographs: [{ at: 0, seed: random.seed(), box: [0, 0, side, side] }],
      }
    : { widthPx: side, heightPx: side, calls: isClear ? mark : [...ground(backing, side, side), ...mark] };
  const must = isPhotograph ? (['wholeRectangle'] as const) : isClear ? [] : (['whiteBox'] as const);
  const jpeg = !isClear && random.share() < 0.5 ? { jpegQuality: random.between(0.8, 0.95) } : {};
  const enlarged = { times, smoothing: random.oneOf(['none', 'low', 'medium', 'high'] as const) };
  return {
    family: 'enlarged',
    drawing: { ...drawing, ...jpeg, ...(isFault ? { enlarged } : {}) },
    // By its pixels alone it would be sharp; by its detail it is soft by far.
    umPerPx: atPxPerInch(random.between(330, 400)),
    cloths: isPhotograph ? [] : [clothFarFrom(random, [backing, ...colours])],
    must: isFault ? ['enlarged', 'blurry', ...must] : must,
    // The edge of a mark on a clear ground becomes a fade of several pixels when it is enlarged smoothly.
    either: isClear ? ['emptyMargin', ...(isFault ? (['haze'] as const) : [])] : [],
  };
}
