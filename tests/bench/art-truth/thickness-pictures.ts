import { USUAL_PRESS_LIMITS } from '@/lib/domain/art/findings/press-limits';
import type { Call } from './drawn-in-page';
import { anyColour, clothFarFrom } from './marks';
import type { Random } from './random';
import type { TruthPicture } from './truth-picture';

// A stroke is measured within a pixel, so a fault is drawn more than a pixel thinner than the limit, and a near miss more
// than a pixel thicker.
const MEASURED_WITHIN_PX = 1.15;

const FULL = 2 * Math.PI;
const SIDE = 760;

/** Lines of a known width beside thick ones: straight at any angle, round, curved, crossing, ending in thick parts. */
export function strokePicture(random: Random, isFault: boolean): TruthPicture {
  const strokePx = random.between(4.5, 22);
  const colour = anyColour(random);
  return {
    family: 'strokes',
    drawing: {
      widthPx: SIDE,
      heightPx: SIDE,
      calls: [['lineWidth', strokePx], ['strokeStyle', colour], ['fillStyle', colour], ...thinShape(random)],
    },
    umPerPx: scaleFor(strokePx, USUAL_PRESS_LIMITS.leastStrokeUm, isFault, random),
    cloths: [clothFarFrom(random, [colour])],
    must: isFault ? ['thinStrokes'] : [],
    // Printed that small a line is wide enough by a pixel only where the picture has few of them.
    either: ['blurry', 'emptyMargin'],
    strokePx,
  };
}

function thinShape(random: Random): Call[] {
  const [cx, cy] = [SIDE / 2 + random.between(-4, 4), SIDE / 2 + random.between(-4, 4)];
  const angle = random.between(0, Math.PI);
  const [dx, dy] = [Math.cos(angle) * 250, Math.sin(angle) * 250];
  const line: Call[] = [['beginPath'], ['moveTo', cx - dx, cy - dy], ['lineTo', cx + dx, cy + dy], ['stroke']];
  const knob = (x: number, y: number): Call[] => [['beginPath'], ['arc', x, y, 60, 0, FULL], ['fill']];
  switch (random.whole(0, 4)) {
    case 0:
      return [...line, ...knob(cx - dx, cy - dy), ...knob(cx + dx, cy + dy)];
    case 1:
      return [['beginPath'], ['arc', cx, cy, random.between(120, 330), 0, FULL], ['stroke'], ...knob(cx, cy)];
    case 2:
      return [
        ['beginPath'],
        ['moveTo', 60, cy],
        ['bezierCurveTo', 250, cy - 380, 500, cy + 380, 700, cy - 40],
        ['stroke'],
        ...knob(60 + 20, cy),
      ];
    case 3:
      // A frame of lines about a thick bar.
      return [
        ['strokeRect', 90, 90, SIDE - 180, SIDE - 180],
        ['fillRect', 200, 330, 360, 100],
      ];
    default:
      // A cross through a ring.
      return [
        ...line,
        ['beginPath'],
        ['moveTo', cx + dy, cy - dx],
        ['lineTo', cx - dy, cy + dx],
        ['stroke'],
        ...knob(cx, cy),
      ];
  }
}

/** Clear room of a known width between or inside of thick parts. */
export function gapPicture(random: Random, isFault: boolean): TruthPicture {
  const gapPx = random.between(5.5, 22);
  const colour = anyColour(random);
  return {
    family: 'gaps',
    drawing: {
      widthPx: SIDE,
      heightPx: SIDE,
      calls: [['fillStyle', colour], ['strokeStyle', colour], ...gapShape(random, gapPx)],
    },
    umPerPx: scaleFor(gapPx, USUAL_PRESS_LIMITS.leastGapUm, isFault, random),
    cloths: [clothFarFrom(random, [colour])],
    must: isFault ? ['thinGaps'] : [],
    either: ['blurry', 'emptyMargin'],
    gapPx,
  };
}

function gapShape(random: Random, gapPx: number): Call[] {
  const [cx, cy] = [SIDE / 2, SIDE / 2];
  const turned = (calls: readonly Call[]): Call[] => [
    ['save'],
    ['translate', cx, cy],
    ['rotate', random.between(0, Math.PI)],
    ...calls,
    ['restore'],
  ];
  switch (random.whole(0, 3)) {
    case 0:
      // Two slabs side by side.
      return turned([
        ['fillRect', -240 - gapPx / 2, -200, 240, 400],
        ['fillRect', gapPx / 2, -200, 240, 400],
      ]);
    case 1:
      // A slot cut out of a disc.
      return [
        ['beginPath'],
        ['arc', cx, cy, 300, 0, FULL],
        ['fill'],
        ['globalCompositeOperation', 'destination-out'],
        ...turned([['fillRect', -160, -gapPx / 2, 320, gapPx]]),
        ['globalCompositeOperation', 'source-over'],
      ];
    case 2:
      // A ring round a disc.
      return [
        ['beginPath'],
        ['arc', cx, cy, 180, 0, FULL],
        ['fill'],
        ['lineWidth', 90],
        ['beginPath'],
        ['arc', cx, cy, 180 + gapPx + 45, 0, FULL],
        ['stroke'],
      ];
    default:
      // A comb.
      return turned([
        ['fillRect', -250, -260, 500, 90],
        ...[0, 1, 2, 3].map((tooth): Call => ['fillRect', -250 + tooth * (90 + gapPx), -180, 90, 400]),
      ]);
  }
}

function scaleFor(widthPx: number, leastUm: number, isFault: boolean, random: Random): number {
  const off = MEASURED_WITHIN_PX + random.between(0, widthPx * 0.4);
  return isFault
    ? leastUm / (widthPx + off)
    : leastUm / (widthPx - Math.min(off, widthPx * 0.45, MEASURED_WITHIN_PX + 2));
}
