import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import { close, line, move, type Path, pathData } from '@/lib/domain/geometry/path';
import type { Lettering } from '@/lib/domain/lettering/lettering';
import { type SetLettering, setLettering } from '@/lib/domain/lettering/set-lettering';
import { thinnestOf, thinnestOfFont, thinnestStrokeMm } from '@/lib/domain/lettering/thinnest-stroke';
import { offeredPackagedFonts } from '@/lib/server/fonts/packaged-fonts';
import { loadTypeEngine } from '@/lib/server/text/load-type-engine';
import { letteringOf, shippedFont } from './fonts-at-hand';

const engine = await loadTypeEngine(offeredPackagedFonts().map(({ ref }) => ref));

/** Two inches tall, ten across at most. */
const SIZE = { capHeightUm: 50_800, mostAcrossUm: 254_000 };
const WIDE = { ...SIZE, mostAcrossUm: 1_500_000 };

function set(lettering: Lettering, size = SIZE, lines: readonly string[] = lettering.lines): SetLettering {
  return setLettering(lettering, size, lines, engine);
}

/** The box of drawn letters as another library measures it, mm: left, top, right, bottom. */
function boxOf({ path }: SetLettering): [left: number, top: number, right: number, foot: number] {
  const points = new svgPathProperties(pathData(path))
    .getParts()
    .flatMap(({ start, end, length, getPointAtLength }) => {
      const between = Array.from({ length: 24 }, (_, index) => getPointAtLength((length * (index + 1)) / 25));
      return [start, end, ...between];
    });
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

describe('lettering of a height', () => {
  it('has capitals of that height in every font that comes with the app', () => {
    for (const { ref } of offeredPackagedFonts()) {
      const [, top, , foot] = boxOf(set(letteringOf(['H'], { font: ref }), WIDE));
      expect(Math.abs(foot - top - 50.8), ref.family).toBeLessThan(0.1);
    }
  });

  it('sets each further line its gap below the one before', () => {
    const one = boxOf(set(letteringOf(['HH']), WIDE));
    const two = boxOf(set(letteringOf(['HH', 'HH'], { lineGapPercent: 50 }), WIDE));
    expect(two[3] - one[3]).toBeCloseTo(1.5 * 50.8, 2);
  });

  it('says the box of its ink as another library measures it', () => {
    for (const text of ['Åsa Ødegård', 'Quigley', '07', 'שלום']) {
      const done = set(letteringOf([text], { letterCase: 'asWritten' }), WIDE);
      const [left, top, right, foot] = boxOf(done);
      expect(done.inkBox?.x).toBeCloseTo(left, 1);
      expect(done.inkBox?.y).toBeCloseTo(top, 1);
      expect((done.inkBox?.x ?? 0) + (done.inkBox?.width ?? 0)).toBeCloseTo(right, 1);
      expect((done.inkBox?.y ?? 0) + (done.inkBox?.height ?? 0)).toBeCloseTo(foot, 1);
    }
  });

  it('counts the line round the letters into its ink, and never squeezes it', () => {
    const plain = set(letteringOf(['CREW']), WIDE).inkBox;
    const lined = set(letteringOf(['CREW'], { outline: { hex: '#000000', widthUm: 3_000 } }), WIDE).inkBox;
    expect((lined?.width ?? 0) - (plain?.width ?? 0)).toBeCloseTo(6, 6);
    expect((lined?.height ?? 0) - (plain?.height ?? 0)).toBeCloseTo(6, 6);
    const tight = set(letteringOf(['CREWCREWCREW'], { outline: { hex: '#000000', widthUm: 3_000 } }));
    expect(tight.outlineMm).toBe(3);
    expect(tight.inkBox?.width).toBeCloseTo(254, 6);
  });

  it('adds room between letters and none after the last', () => {
    const close = set(letteringOf(['ABC']), WIDE).inkBox?.width ?? 0;
    const spaced = set(letteringOf(['ABC'], { trackingPermille: 100 }), WIDE).inkBox?.width ?? 0;
    expect(spaced - close).toBeCloseTo(2 * 5.08, 6);
  });

  it('keeps joined letters joined when others are spaced out', () => {
    const arabic = letteringOf(['محمد'], { letterCase: 'asWritten' });
    const close = set(arabic, WIDE).inkBox?.width ?? 0;
    const spaced = set({ ...arabic, trackingPermille: 300 }, WIDE).inkBox?.width ?? 0;
    // All four letters of this name are written as one.
    expect(spaced).toBeCloseTo(close, 6);
  });
});

describe('lettering that is too wide', () => {
  const names = fc.string({ unit: fc.constantFrom(...'ABCDEGHIJKLMNOPRSTUVWYÉØ '), minLength: 1, maxLength: 24 });
  const sizes = fc.record({
    capHeightUm: fc.integer({ min: 5_000, max: 200_000 }),
    mostAcrossUm: fc.integer({ min: 40_000, max: 400_000 }),
  });

  it('is squeezed to its floor, then set lower, and never wider than it may be', () => {
    fc.assert(
      fc.property(names, sizes, fc.integer({ min: -25, max: 25 }), (name, size, archPercent) => {
        const done = set(letteringOf([name], { archPercent }), size);
        if (!done.inkBox) return;
        expect(done.inkBox.width).toBeLessThanOrEqual(size.mostAcrossUm / 1_000 + 0.01);
        if (done.outcome === 'fits') expect([done.squeezedPercent, done.capHeightUm]).toEqual([100, size.capHeightUm]);
        if (done.outcome === 'squeezed') expect(done.capHeightUm).toBe(size.capHeightUm);
        if (done.outcome === 'lowered') {
          expect(done.squeezedPercent).toBe(70);
          expect(done.capHeightUm).toBeLessThan(size.capHeightUm);
        }
        // Nothing is made smaller than it has to be: what gave way fills the width.
        if (done.outcome !== 'fits') expect(done.inkBox.width).toBeGreaterThan((size.mostAcrossUm / 1_000) * 0.98);
      }),
      { numRuns: 60 },
    );
  });

  it('squeezes by the share it has to', () => {
    const natural = set(letteringOf(['BARTHOLOMEW']), WIDE).inkBox?.width ?? 0;
    const done = set(letteringOf(['BARTHOLOMEW']), { ...SIZE, mostAcrossUm: Math.round(natural * 800) });
    expect(done.squeezedPercent).toBe(80);
    expect(done.outcome).toBe('squeezed');
  });
});

describe('arched lettering', () => {
  it('rises in its middle by its share of the width it may take', () => {
    const arch = 20;
    // A bar of letters as wide as may be: the feet of its first and middle letter lie so far apart.
    const done = set(letteringOf(['HHHHHHHHHHHHHHHHH'], { archPercent: arch, font: shippedFont('Oswald') }));
    const box = done.inkBox;
    const flat = set(letteringOf(['HHHHHHHHHHHHHHHHH'])).inkBox;
    // The arc of a chord of 254 mm rises by 20 % of it; letters standing on its ends lean outwards.
    expect((box?.height ?? 0) - (flat?.height ?? 0)).toBeGreaterThan(0.15 * 254);
    expect((box?.height ?? 0) - (flat?.height ?? 0)).toBeLessThan(0.2 * 254);
  });

  it('lays a short name and a long one on the same arc', () => {
    const [short, long] = ['IHI', 'HHHHHHHH'].map((name) => set(letteringOf([name], { archPercent: 15 })));
    // Over the width of the short name the long one's top edge is where the short one's is.
    const topAt = (done: SetLettering | undefined) =>
      Math.min(...(done?.inkHull ?? []).filter(({ x }) => Math.abs(x) < 6).map(({ y }) => y));
    expect(Math.abs(topAt(short) - topAt(long))).toBeLessThan(1);
  });

  it('sags as far as it would rise', () => {
    const up = set(letteringOf(['HOH'], { archPercent: 18 })).inkBox;
    const down = set(letteringOf(['HOH'], { archPercent: -18 })).inkBox;
    expect(up?.width).toBeCloseTo(down?.width ?? 0, 0);
    expect(up?.height).toBeCloseTo(down?.height ?? 0, 0);
  });
});

describe('the thinnest stroke of a font', () => {
  it.each(['Anton', 'Archivo Black', 'Rubik', 'Oswald'])(
    '%s is no thicker than the upright of its I, and no hairline',
    (family) => {
      const font = shippedFont(family);
      const [left, , right] = boxOf(set(letteringOf(['I'], { font }), WIDE));
      const mm = thinnestStrokeMm(thinnestOfFont(font, engine), WIDE.capHeightUm, 100) ?? 0;
      // Fonts of even stroke: the bars of their letters are thinner than the uprights, but not by much.
      expect(mm).toBeLessThanOrEqual(right - left + 0.01);
      expect(mm).toBeGreaterThan((right - left) / 3);
    },
  );

  it('is that of a shape whose strokes are known', () => {
    const ring = (at: number, size: number) => rectangle(at, at, size, size);
    // A square ring 12 thick, and an upright of 9: the thinner of the two is found.
    expect(thinnestOf([[...ring(0, 100), ...ring(12, 76)]])).toBeCloseTo(12, 6);
    expect(thinnestOf([[...ring(0, 100), ...ring(12, 76)], rectangle(200, 0, 9, 100)])).toBeCloseTo(9, 6);
  });

  it('grows with the letters and shrinks where they are squeezed', () => {
    expect(thinnestStrokeMm(100, 50_000, 100)).toBeCloseTo(5, 9);
    expect(thinnestStrokeMm(100, 50_000, 70)).toBeCloseTo(3.5, 9);
    expect(thinnestStrokeMm(null, 50_000, 100)).toBeNull();
  });
});

function rectangle(x: number, y: number, width: number, height: number): Path {
  return [
    move({ x, y }),
    line({ x: x + width, y }),
    line({ x: x + width, y: y + height }),
    line({ x, y: y + height }),
    close,
  ];
}

describe('letters no font has', () => {
  it('are named, and nothing is drawn for them', () => {
    const done = set(letteringOf(['A\u{13000}B']), WIDE);
    expect(done.missing).toEqual(['\u{13000}']);
  });

  it('are said to be borrowed where another font has them', () => {
    const done = set(letteringOf(['דנה'], { font: shippedFont('Anton') }), WIDE);
    expect(done.missing).toEqual([]);
    expect(done.borrowed.map(({ font }) => font.family)).toContain('Noto Sans Hebrew');
  });

  it('leave nothing to draw where there are no words', () => {
    const done = set(letteringOf(['']), WIDE);
    expect([done.inkBox, done.path.length, done.inkHull.length]).toEqual([null, 0, 0]);
  });
});
