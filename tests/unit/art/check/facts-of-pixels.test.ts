import { describe, expect, it } from 'vitest';
import type { PixelBytes } from '@/lib/domain/art/check/pixel-classes';
import { hexDifference } from '@/lib/domain/art/colour/ciede2000';
import { chance, factsOf, type Paint, painted } from './painted';

const NAVY = [27, 42, 74] as const;
const RED = [200, 16, 46] as const;
const WHITE = [255, 255, 255] as const;
const GREY = [40, 40, 44] as const;

const disc = (x: number, y: number, cx: number, cy: number, r: number) => Math.hypot(x - cx, y - cy) < r;
const ringAndDisc: Paint = (x, y) => {
  if (disc(x, y, 100, 100, 70) && !disc(x, y, 100, 100, 50)) return NAVY;
  return disc(x, y, 100, 100, 25) ? RED : null;
};
const on =
  (paint: Paint, ground: readonly [number, number, number]): Paint =>
  (x, y) =>
    paint(x, y) ?? ground;

/** As many colours as a camera has: patches with grain. */
function noise(widthPx: number, heightPx: number): PixelBytes {
  const random = chance(7);
  const patches = Array.from({ length: 400 }, () => [random() * 200, random() * 200, random() * 200] as const);
  return painted(widthPx, heightPx, (x, y) => {
    const [r, g, b] = patches[Math.floor(x / 11) + 20 * Math.floor(y / 11)] ?? NAVY;
    return [r + random() * 40, g + random() * 40, b + random() * 40];
  });
}

describe('the backing', () => {
  it('is the colour round a drawing, with the places inside that the edges do not reach', () => {
    const { backing, look, inkPx } = factsOf(painted(200, 200, on(ringAndDisc, WHITE)));
    expect(look).toBe('drawn');
    expect(inkPx).toBe(200 * 200);
    expect(backing?.hex).toBe('#FFFFFF');
    expect(backing?.rimShare).toBe(1);
    expect(backing?.share).toBeCloseTo(1 - (Math.PI * 70 ** 2) / 200 ** 2, 1);
    expect(backing?.enclosed).toHaveLength(1);
  });

  it('is not there where a picture is clear round its drawing, or is a photograph', () => {
    expect(factsOf(painted(200, 200, ringAndDisc)).backing).toBeNull();
    const photograph = factsOf(noise(200, 200));
    expect(photograph.backing).toBeNull();
    expect(photograph.look).toBe('photograph');
  });

  it('is found in a white box on a clear ground, and not in a coloured one', () => {
    const boxed =
      (ground: readonly [number, number, number]): Paint =>
      (x, y) =>
        x > 20 && y > 20 && x < 180 && y < 180 ? (disc(x, y, 100, 100, 50) ? RED : ground) : null;
    expect(factsOf(painted(200, 200, boxed(WHITE))).backing?.hex).toBe('#FFFFFF');
    expect(factsOf(painted(200, 200, boxed(NAVY))).backing).toBeNull();
  });
});

describe('colours of the ink', () => {
  it('are those of what lies on the backing, and by how much of it has them', () => {
    const { colours, oneColourHex } = factsOf(painted(200, 200, on(ringAndDisc, WHITE)));
    expect(colours.map(({ hex }) => hex)).toEqual(['#1B2A4A', '#C8102E']);
    const ring = 70 ** 2 - 50 ** 2;
    expect(colours[0]?.share).toBeCloseTo(ring / (ring + 25 ** 2), 1);
    expect(oneColourHex).toBeNull();
  });

  it('are one where shades are too near to tell apart', () => {
    const shades = painted(120, 120, (x, y) => (disc(x, y, 60, 60, 50) ? [27, 42 + Math.round(x / 40), 74] : null));
    const { colours, oneColourHex } = factsOf(shades);
    expect(colours).toHaveLength(1);
    expect(hexDifference(oneColourHex ?? '#FFFFFF', '#1B2B4A')).toBeLessThan(2);
  });
});

describe('bars along the sides', () => {
  const paper = on(ringAndDisc, WHITE);

  it('are found above and below a picture, and the backing inside of them', () => {
    const screen = painted(200, 260, (x, y) => (y < 24 || y >= 230 ? GREY : paper(x, y - 30)));
    const { junk, backing } = factsOf(screen);
    expect(junk).toEqual([
      { x: 0, y: 0, width: 200, height: 24 },
      { x: 0, y: 230, width: 200, height: 30 },
    ]);
    expect(backing?.hex).toBe('#FFFFFF');
  });

  it('are found round a card that lies on something darker', () => {
    const card = painted(240, 240, (x, y) => (x < 20 || y < 20 || x >= 220 || y >= 220 ? GREY : paper(x - 20, y - 20)));
    expect(factsOf(card).junk).toHaveLength(4);
  });

  it('are neither the paper round a dark box nor the stripes of a flag', () => {
    const box = painted(200, 200, (x, y) => (x < 14 || y < 14 || x >= 186 || y >= 186 ? WHITE : NAVY));
    expect(factsOf(box).junk).toEqual([]);
    const flag = painted(200, 150, (_x, y) => (y < 50 ? RED : y < 100 ? WHITE : NAVY));
    expect(factsOf(flag).junk).toEqual([]);
  });
});

describe('haze', () => {
  const glowing =
    (reach: number): Paint =>
    (x, y) => {
      const out = Math.hypot(x - 100, y - 100) - 50;
      return out < reach ? [...NAVY, out < 0 ? 255 : 200 * (1 - out / reach)] : null;
    };

  it('is ink that fades over many pixels', () => {
    const { haze } = factsOf(painted(200, 200, glowing(30)));
    expect(haze.share).toBeGreaterThan(0.2);
    expect(haze.reachPx).toBeGreaterThan(15);
    expect(haze.spots.length).toBeGreaterThan(0);
  });

  it('is neither a smooth edge nor a hairline', () => {
    expect(factsOf(painted(200, 200, ringAndDisc)).haze.share).toBe(0);
    const hairlines: Paint = (x, y) => (Math.abs(x - y) < 0.5 || Math.abs(x + y - 200) < 0.5 ? NAVY : null);
    expect(factsOf(painted(200, 200, hairlines)).haze.share).toBe(0);
  });
});

describe('specks', () => {
  it('are stray pixels, and not the dot of a letter or a screen of dots', () => {
    const stray: Paint = (x, y) => (y < 22 && y > 20 && Math.floor(x) % 40 === 10 ? NAVY : ringAndDisc(x, y));
    expect(factsOf(painted(200, 200, stray)).specks.count).toBe(5);
    const dotted: Paint = (x, y) => (disc(x, y, 100, 26, 1.5) ? NAVY : ringAndDisc(x, y));
    expect(factsOf(painted(200, 200, dotted)).specks.count).toBe(0);
    const screen: Paint = (x, y) => (y < 200 ? (disc(x % 12, y % 12, 6, 6, 1.4) ? NAVY : null) : RED);
    expect(factsOf(painted(240, 240, screen)).specks.count).toBe(0);
  });
});

describe('how much of the detail is real', () => {
  const small = painted(110, 110, (x, y) => ringAndDisc(x * 1.8, y * 1.8));

  function enlarged(times: number, smooth: boolean): PixelBytes {
    const [widthPx, heightPx] = [Math.round(small.widthPx * times), Math.round(small.heightPx * times)];
    const rgba = new Uint8Array(widthPx * heightPx * 4);
    const at = (x: number, y: number, channel: number) => {
      const [cx, cy] = [Math.min(109, Math.max(0, x)), Math.min(109, Math.max(0, y))];
      return small.rgba[(cy * 110 + cx) * 4 + channel] ?? 0;
    };
    for (let index = 0; index < widthPx * heightPx; index += 1) {
      const [u, v] = [((index % widthPx) + 0.5) / times - 0.5, (Math.floor(index / widthPx) + 0.5) / times - 0.5];
      const [x, y] = smooth ? [Math.floor(u), Math.floor(v)] : [Math.round(u), Math.round(v)];
      const [right, down] = smooth ? [u - x, v - y] : [0, 0];
      for (let channel = 0; channel < 4; channel += 1) {
        const upper = at(x, y, channel) * (1 - right) + at(x + 1, y, channel) * right;
        const lower = at(x, y + 1, channel) * (1 - right) + at(x + 1, y + 1, channel) * right;
        rgba[index * 4 + channel] = Math.round(upper * (1 - down) + lower * down);
      }
    }
    return { rgba, widthPx, heightPx };
  }

  it('is all of it in an original', () => {
    expect(factsOf(small).detailShare).toBe(1);
  });

  it.each([2, 3, 4])('is about a part of it in a picture enlarged %i times, smoothly or not', (times) => {
    expect(factsOf(enlarged(times, true)).detailShare).toBeCloseTo(1 / times, 1);
    expect(factsOf(enlarged(times, false)).detailShare).toBeCloseTo(1 / times, 1);
  });
});
