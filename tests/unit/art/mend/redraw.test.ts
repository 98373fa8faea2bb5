import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { suggestedPalette } from '@/lib/domain/art/mend/palette';
import { openPixels } from '@/lib/server/image/quiet-sharp';
import { redraw } from '@/lib/server/image/redraw';
import { differences, drawn, laidOver, pixelAt, pixelsOf } from './pictures';

const shapes =
  '<circle cx="50" cy="50" r="44" fill="#203864"/><circle cx="50" cy="50" r="34" fill="#F4E9D0"/>' +
  '<path d="M30 68 L50 24 L70 68 Z" fill="#B0302A"/><circle cx="50" cy="55" r="7" fill="#8F8E9A"/>';
const colours = ['#F4E9D0', '#203864', '#B0302A', '#8F8E9A'];

describe('redrawing', () => {
  it('comes close to the same drawing painted three times as large', async () => {
    const redrawn = await redraw(await drawn(110, shapes), colours, 3);
    expect([redrawn.widthPx, redrawn.heightPx]).toEqual([330, 330]);
    // librsvg paints the drawing itself at that size; enlarging the small picture instead is what redrawing has to beat.
    const wanted = await laidOver(await drawn(330, shapes), '#FFFFFF');
    const small = await drawn(110, shapes);
    const { data } = await openPixels(small)
      .resize(330, 330, { kernel: 'cubic' })
      .raw()
      .toBuffer({ resolveWithObject: true });
    const enlarged = await laidOver({ rgba: new Uint8Array(data), widthPx: 330, heightPx: 330 }, '#FFFFFF');
    const off = (picture: typeof wanted) =>
      differences(picture, wanted).reduce((sum, value) => sum + value, 0) / 108_900;
    const again = await laidOver(redrawn, '#FFFFFF');
    expect(off(again)).toBeLessThan(off(enlarged));
    expect(differences(again, wanted).filter((difference) => difference > 128).length / 108_900).toBeLessThan(0.005);
  });

  it('has no colour but those asked for and, along edges, mixtures of two; the same each time', async () => {
    const picture = await drawn(90, shapes);
    const redrawn = await redraw(picture, colours, 2);
    const flat = pixelsOf(redrawn).filter(([red, green, blue, alpha]) => {
      const hex = `#${[red, green, blue].map((value) => value.toString(16).padStart(2, '0')).join('')}`.toUpperCase();
      return alpha === 0 || (alpha === 255 && colours.includes(hex));
    });
    expect(flat.length / (180 * 180)).toBeGreaterThan(0.9);
    expect(pixelAt(redrawn, 90, 98)).toEqual([0x8f, 0x8e, 0x9a, 255]);
    expect(Buffer.from((await redraw(picture, colours, 2)).rgba).equals(Buffer.from(redrawn.rgba))).toBe(true);
  });

  it('merges a colour that was left out into the nearest that was not', async () => {
    const redrawn = await redraw(await drawn(90, shapes), ['#F4E9D0', '#203864', '#B0302A'], 1);
    expect(pixelAt(redrawn, 45, 49)).not.toEqual([0x8f, 0x8e, 0x9a, 255]);
    expect(pixelAt(redrawn, 45, 30)).toEqual([0xb0, 0x30, 0x2a, 255]);
  });

  it('finds the colours of a drawing, clean or saved as a strong JPEG', async () => {
    expect(suggestedPalette(await drawn(150, shapes)).sort()).toEqual([...colours].sort());
    const white = await laidOver(await drawn(150, shapes), '#FFFFFF');
    const jpeg = await openPixels(white).flatten().jpeg({ quality: 60 }).toBuffer();
    const { data } = await sharp(jpeg).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
    expect(suggestedPalette({ rgba: new Uint8Array(data), widthPx: 150, heightPx: 150 })).toHaveLength(5);
  });
});
