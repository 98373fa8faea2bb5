import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { knockOut } from '@/lib/domain/art/mend/knock-out';
import type { MendPicture } from '@/lib/domain/art/mend/mend-picture';
import { inkShare, unMixed } from '@/lib/domain/art/mend/un-mix';
import { alphasOf, anyPicture, differences, drawn, laidOver, painted, pixelAt, pixelsOf } from './pictures';

const white = { hex: '#FFFFFF', tolerance: 4, fromEdges: true, enclosed: [] };
const ring =
  '<circle cx="50" cy="50" r="40" fill="#203864"/><circle cx="50" cy="50" r="24" fill="#fff"/>' +
  '<path d="M38 62 L50 36 L62 62 Z" fill="#B0302A"/>';
const backing = '<rect width="100" height="100" fill="#fff"/>';

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe('un-mixing', () => {
  const channel = fc.integer({ min: 0, max: 255 });
  const colour = fc.tuple(channel, channel, channel);

  it('gives alpha and ink that laid over the backing are the colour again', () => {
    // Porter and Duff, "Compositing Digital Images", SIGGRAPH 1984: C = αF + (1 − α)B.
    fc.assert(
      fc.property(colour, colour, fc.double({ min: 0, max: 1, noNaN: true }), (seen, behind, share) => {
        const { alpha, ink } = unMixed(seen, share, behind);
        for (const at of [0, 1, 2] as const) {
          const again = (ink[at] * alpha + behind[at] * (255 - alpha)) / 255;
          if (alpha > 0) expect(Math.abs(again - seen[at])).toBeLessThanOrEqual(0.51);
        }
        expect(alpha).toBeGreaterThanOrEqual(Math.floor(share * 255));
      }),
    );
  });

  it('finds the share a colour was mixed with', () => {
    fc.assert(
      fc.property(colour, colour, fc.double({ min: 0, max: 1, noNaN: true }), (ink, behind, share) => {
        const apart = Math.hypot(...ink.map((value, at) => value - (behind[at] ?? 0)));
        fc.pre(apart > 40);
        const mixed = ink.map((value, at) => Math.round(share * value + (1 - share) * (behind[at] ?? 0)));
        const found = inkShare([mixed[0] ?? 0, mixed[1] ?? 0, mixed[2] ?? 0], ink, behind);
        expect(Math.abs(found - share)).toBeLessThanOrEqual(1 / apart);
      }),
    );
  });
});

describe('knocking out a backing', () => {
  it('leaves what was drawn without it: clear where it was, smooth at the edges, no rim of its colour', async () => {
    const knockedOut = knockOut(await drawn(160, backing + ring), white);
    // The same drawing painted on nothing by librsvg; the middle of the ring is white there too.
    const wanted = await drawn(160, ring);
    const alphas = alphasOf(knockedOut);
    const off = alphasOf(wanted).map((alpha, index) => Math.abs(alpha - (alphas[index] ?? 0)));
    expect(Math.max(...off)).toBeLessThanOrEqual(12);
    for (const hex of ['#000000', '#2E7D32', '#FFFFFF']) {
      const differs = differences(await laidOver(knockedOut, hex), await laidOver(wanted, hex));
      expect(differs.filter((difference) => difference > 16).length).toBeLessThanOrEqual(4);
      expect(mean(differs)).toBeLessThan(0.2);
    }
  });

  it('looks as before when it is laid over the backing again, to the noise that is taken for full ink', async () => {
    const picture = await drawn(120, backing + ring);
    const again = await laidOver(knockOut(picture, white), '#FFFFFF');
    expect(Math.max(...differences(again, picture))).toBeLessThanOrEqual(8);
  });

  it('reaches an enclosed area only where it was pointed at, or a pixel or two beside it', async () => {
    const picture = await drawn(120, backing + ring);
    expect(pixelAt(knockOut(picture, white), 60, 82)[3]).toBe(255);
    expect(pixelAt(knockOut(picture, { ...white, enclosed: [{ x: 60, y: 82 }] }), 60, 82)[3]).toBe(0);
    const only = knockOut(picture, { ...white, fromEdges: false, enclosed: [{ x: 60, y: 82 }] });
    expect([pixelAt(only, 60, 82)[3], pixelAt(only, 2, 2)[3]]).toEqual([0, 255]);
    const beside = painted(30, 30, (x, y) =>
      x > 4 && x < 25 && y > 4 && y < 25 ? [255, 255, 255, 255] : [0, 0, 0, 255],
    );
    const missed = knockOut(beside, { ...white, fromEdges: false, enclosed: [{ x: 3, y: 15 }] });
    expect(pixelAt(missed, 15, 15)[3]).toBe(0);
  });

  it('keeps a line of the backing colour that lies inside a thin dark outline', () => {
    const picture = painted(40, 40, (x, y) => {
      const fromSide = Math.min(x, y, 39 - x, 39 - y);
      return fromSide >= 12 ? [180, 20, 20, 255] : fromSide === 10 ? [0, 0, 0, 255] : [255, 255, 255, 255];
    });
    const after = knockOut(picture, white);
    expect([9, 10, 11, 12].map((x) => pixelAt(after, x, 20)[3])).toEqual([0, 255, 255, 255]);
  });

  it('takes nothing away but what is within the tolerance and joined to the edges', () => {
    const kinds = [
      [255, 255, 255, 255],
      [255, 255, 255, 255],
      [250, 251, 250, 255],
      [10, 20, 120, 255],
      [180, 20, 20, 255],
    ] as const;
    fc.assert(
      fc.property(anyPicture(kinds), (picture) => {
        const after = knockOut(picture, white);
        const reached = reachedFromEdges(picture);
        alphasOf(after).forEach((alpha, index) => {
          // Backing may keep the little ink that was mixed into it; ink keeps all of it here, where nothing is mixed.
          if (reached[index]) expect(alpha).toBeLessThan(16);
          else expect(alpha).toBe(255);
        });
      }),
    );
  });

  it('takes the same time for a picture of one colour as for any: nothing is left of it', () => {
    const all = knockOut(
      painted(300, 200, () => [255, 255, 255, 255]),
      white,
    );
    expect(Math.max(...alphasOf(all))).toBe(0);
  });
});

/** Brute force: near-white pixels joined to the rim side by side, spread until nothing changes. */
function reachedFromEdges(picture: MendPicture): boolean[] {
  const { widthPx, heightPx } = picture;
  const pixels = pixelsOf(picture);
  const isNear = (index: number) => (pixels[index]?.[0] ?? 0) >= 250 && (pixels[index]?.[1] ?? 0) >= 250;
  const onRim = (index: number) => {
    const [x, y] = [index % widthPx, Math.floor(index / widthPx)];
    return x === 0 || y === 0 || x === widthPx - 1 || y === heightPx - 1;
  };
  const reached = pixels.map((_, index) => isNear(index) && onRim(index));
  for (let changed = true; changed; ) {
    changed = false;
    for (const index of pixels.keys()) {
      if (reached[index] || !isNear(index)) continue;
      const x = index % widthPx;
      const sides = [
        x > 0 && reached[index - 1],
        x < widthPx - 1 && reached[index + 1],
        reached[index - widthPx],
        reached[index + widthPx],
      ];
      if (sides.some(Boolean)) {
        reached[index] = true;
        changed = true;
      }
    }
  }
  return reached;
}
