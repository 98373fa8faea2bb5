import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { ArtFacts } from '@/lib/domain/art/art-facts';
import { factsOfPixels } from '@/lib/domain/art/check/facts-of-pixels';
import { inkOfPixels } from '@/lib/domain/art/ink';
import { applyMend } from '@/lib/domain/art/mend/apply-mend';
import { knockOut } from '@/lib/domain/art/mend/knock-out';
import { mendStepSchema } from '@/lib/domain/art/mend/recipe';
import { suggestedScale, suggestedStep } from '@/lib/domain/art/mend/suggest-step';
import { suggestedTolerance } from '@/lib/domain/art/mend/suggest-tolerance';
import { umFromInches } from '@/lib/domain/measure/length';
import { openPixels } from '@/lib/server/image/quiet-sharp';
import { alphasOf, drawn, laidOver, painted, pixelAt } from './pictures';

function factsOf(picture: { rgba: Uint8Array; widthPx: number; heightPx: number }): ArtFacts {
  const ink = inkOfPixels(picture.rgba, picture.widthPx, picture.heightPx);
  if (!ink) throw new Error('nothing prints');
  return factsOfPixels(picture, ink);
}

const purpose = { widthsUm: null, cloths: [], leastStrokeUm: 500 };
const blank = factsOf(painted(300, 300, () => [20, 40, 90, 255]));

describe('suggested settings', () => {
  it('thicken by what the thinnest stroke lacks where it is printed smallest, so that it passes', async () => {
    const hairline = await drawn(300, '<path d="M10 40 H90 M50 10 V90" stroke="#143C78" stroke-width="1"/>');
    const facts = factsOf(hairline);
    const widthsUm = { least: umFromInches(1), most: umFromInches(9) };
    const step = suggestedStep('thicken', facts, { ...purpose, widthsUm });
    if (step?.mend !== 'thicken') throw new Error('no thickening');
    const mended = applyMend(hairline, step);
    if (!mended.ok) throw new Error(mended.reason);
    const after = factsOf(mended.picture);
    const strokeUm = ((after.strokes.thinnestPx ?? 0) / facts.inkBox.width) * umFromInches(1);
    // To one pixel, as strokes are measured, of the 240 to the inch here.
    expect(strokeUm).toBeGreaterThan(500 - umFromInches(1) / 240);
    expect(
      suggestedStep('thicken', facts, { ...purpose, widthsUm: { ...widthsUm, least: umFromInches(60) } }),
    ).toBeNull();
  });

  it('leave what lies between the bars along the sides', () => {
    const junk = [
      { x: 0, y: 0, width: 300, height: 24 },
      { x: 0, y: 280, width: 300, height: 20 },
      { x: 290, y: 24, width: 10, height: 276 },
    ];
    expect(suggestedStep('crop', { ...blank, junk }, purpose)).toEqual({
      mend: 'crop',
      box: { x: 0, y: 24, width: 290, height: 256 },
    });
    expect(suggestedStep('erase', { ...blank, junk }, purpose)).toEqual({ mend: 'erase', boxes: junk });
    expect(suggestedStep('crop', blank, purpose)).toBeNull();
  });

  it('recolour for the cloth: light ink on dark, dark ink on light', () => {
    const hexOn = (...cloths: string[]) => suggestedStep('recolour', blank, { ...purpose, cloths });
    expect(hexOn('#1B2A41', '#202020')).toMatchObject({ hex: '#FFFFFF' });
    expect(hexOn('#FFFFFF')).toMatchObject({ hex: '#1A1A1A' });
  });

  it('are steps a recipe can hold', () => {
    const facts = {
      ...blank,
      haze: { share: 0.2, reachPx: 20, spots: [] },
      specks: { count: 1, spots: [{ x: 1, y: 1, width: 3, height: 2 }] },
    };
    for (const mend of ['dots', 'clearSpecks', 'turn', 'recolour'] as const) {
      const step = suggestedStep(mend, facts, { ...purpose, widthsUm: { least: 20_000, most: 400_000 } });
      expect(mendStepSchema.safeParse(step).success).toBe(true);
    }
    expect(suggestedScale(blank, purpose)).toBe(8);
    expect(suggestedScale(blank, { ...purpose, widthsUm: { least: 25_400, most: 25_400 } })).toBe(1);
  });

  it('knock a JPEG out with a tolerance that takes its noise and leaves its ink', async () => {
    const drawing = await laidOver(await drawn(200, '<circle cx="50" cy="50" r="30" fill="#203864"/>'), '#FFFFFF');
    const clean = suggestedTolerance(drawing, '#FFFFFF');
    const jpeg = await openPixels(drawing).flatten().jpeg({ quality: 45 }).toBuffer();
    const { data } = await sharp(jpeg).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
    const noisy = { rgba: new Uint8Array(data), widthPx: 200, heightPx: 200 };
    const tolerance = suggestedTolerance(noisy, '#FFFFFF');
    expect(tolerance).toBeGreaterThan(clean);
    const after = knockOut(noisy, { hex: '#FFFFFF', tolerance, fromEdges: true, enclosed: [] });
    expect(pixelAt(after, 100, 100)[3]).toBe(255);
    const covered = alphasOf(after).reduce((sum, alpha) => sum + alpha / 255, 0);
    expect(covered / (Math.PI * 60 ** 2)).toBeGreaterThan(0.97);
    expect(covered / (Math.PI * 60 ** 2)).toBeLessThan(1.05);
    const withCream = await drawn(
      200,
      '<rect width="100" height="100" fill="#fff"/><circle cx="50" cy="50" r="30" fill="#FBF3E0"/>',
    );
    const kept = { hex: '#FFFFFF', tolerance: suggestedTolerance(withCream, '#FFFFFF'), fromEdges: true, enclosed: [] };
    expect(pixelAt(knockOut(withCream, kept), 100, 100)[3]).toBe(255);
  });
});
