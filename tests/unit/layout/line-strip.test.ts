import { describe, expect, it } from 'vitest';
import { HANG_PX, lineStrip, mmPerPxOnLine, placeOnLine } from '@/lib/domain/layout/line-strip';

const FRAME = { box: { x: -500, y: -24, width: 1000, height: 900 }, widthPx: 1100, heightPx: 990 };

function stripFor(sizes: number) {
  const strip = lineStrip(FRAME, sizes);
  if (!strip) throw new Error(`no line for ${sizes}`);
  return strip;
}

describe('the line', () => {
  it('gives every size a place of the same width', () => {
    expect(stripFor(12).widthPx).toBe(12 * stripFor(1).placeWidthPx);
    expect(stripFor(12).heightPx).toBe(stripFor(1).heightPx);
  });

  it('is no picture for more sizes than a WebP is wide', () => {
    // RFC 9649: at most 16 383 px.
    expect(stripFor(60).widthPx).toBeLessThanOrEqual(16_383);
    expect(lineStrip(FRAME, 61)).toBeNull();
  });

  it('draws a long garment smaller rather than in a taller line', () => {
    const long = { box: { x: -300, y: 0, width: 600, height: 1500 }, widthPx: 1100, heightPx: 2750 };
    const strip = lineStrip(long, 4);
    if (!strip) throw new Error('no line for 4');
    expect(strip.heightPx).toBeLessThan(2 * strip.placeWidthPx);
    const place = placeOnLine(strip, long, long.box);
    expect(place.width / strip.placeWidthPx).toBeCloseTo(place.height / strip.heightPx, 9);
    expect(place.y + place.height).toBeGreaterThanOrEqual(1500);
  });

  it('hangs each garment in the middle of its place with its top at the string, all at one scale', () => {
    const strip = stripFor(3);
    const mmPerPx = mmPerPxOnLine(strip, FRAME);
    expect(mmPerPx / (FRAME.box.width / strip.placeWidthPx)).toBeCloseTo(1, 2);
    for (const garment of [
      { x: -300, y: 0, width: 600, height: 600 },
      { x: -80, y: -210, width: 240, height: 500 },
    ]) {
      const place = placeOnLine(strip, FRAME, garment);
      expect(place.width / strip.placeWidthPx).toBeCloseTo(mmPerPx, 9);
      expect(place.height / strip.heightPx).toBeCloseTo(mmPerPx, 9);
      expect(place.x + place.width / 2).toBeCloseTo(garment.x + garment.width / 2, 9);
      expect((garment.y - place.y) / mmPerPx).toBeCloseTo(HANG_PX, 9);
      expect(place.y + place.height).toBeGreaterThan(garment.y + garment.height);
    }
  });
});
