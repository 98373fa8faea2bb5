import { describe, expect, it } from 'vitest';
import { relativeLuminance } from '@/lib/domain/garment/cloth-colours';
import { pointOf } from '@/lib/domain/garment/flat';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import { garmentSchema } from '@/lib/domain/layout/document';
import { blankFromChart } from '@/lib/domain/layout/garment-edits';
import { pictureFrame } from '@/lib/domain/layout/picture-frame';
import {
  commonBox,
  composeScene,
  flatOf,
  LAYERS,
  placedPrint,
  type SceneKey,
  sceneSchema,
  shownSides,
} from '@/lib/domain/layout/scene';
import { groupFor, keyOf, offeredSizes } from '@/lib/domain/layout/sizes';
import { type OutlineText, tapeShapes, tapesFor } from '@/lib/domain/layout/tape';
import { frozenScenes, withFrozenFlats } from '@/lib/domain/revision/frozen-scenes';
import { TEE_LOCATIONS, teeWithPrints } from './sample-layout';

const layout = teeWithPrints(['fullFront', 'leftChest', 'fullBack', 'backNeck']);
const [tee] = layout.garments;
if (!tee) throw new Error('the sample has no garment');
const sizes = offeredSizes(tee);

/** Every letter a square as tall as a capital: enough to see where words are put. */
const squareLetters: OutlineText = (text, capHeightMm, { x, y }) => ({
  d: `M${x} ${y}h${text.length * capHeightMm}v${-capHeightMm}Z`,
  widthMm: text.length * capHeightMm,
});

function keyFor(index: number, side: 'front' | 'back'): SceneKey {
  const offered = sizes[index];
  if (!offered) throw new Error(`no size ${index}`);
  return { garmentId: 'tee', size: keyOf(offered), side, lineId: null };
}

describe('a scene', () => {
  it('is painted cloth first, then prints', () => {
    const layers = composeScene(layout, keyFor(7, 'front')).shapes.map(({ layer }) => LAYERS.indexOf(layer));
    expect([...layers].sort((a, b) => a - b)).toEqual(layers);
    expect(layers.filter((layer) => layer === LAYERS.indexOf('print'))).toHaveLength(2);
  });

  it('shows only the prints of its own side', () => {
    const prints = (side: 'front' | 'back') =>
      composeScene(layout, keyFor(7, side)).shapes.flatMap((shape) => (shape.kind === 'image' ? [shape.printId] : []));
    expect([prints('front'), prints('back')]).toEqual([
      ['fullFront', 'leftChest'],
      ['fullBack', 'backNeck'],
    ]);
  });

  it('is what its own schema says, and survives being written and read', () => {
    const scene = composeScene(layout, keyFor(0, 'back'));
    expect(sceneSchema.parse(JSON.parse(JSON.stringify(scene)))).toEqual(scene);
  });

  it('is drawn the same from a sealed layout as from the working copy', () => {
    const [live, sealed] = [layout, withFrozenFlats(layout)].map((each) =>
      frozenScenes(each, 'in', squareLetters).map(({ sha256 }) => sha256),
    );
    expect(sealed).toEqual(live);
  });

  it('shows a sleeve of a revision only where something is on it', () => {
    expect(shownSides(layout, 'tee', 'crewTee')).toEqual(['front', 'back']);
    expect(shownSides(teeWithPrints(['rightSleeve']), 'tee', 'crewTee')).toEqual(['front', 'back', 'rightSleeve']);
  });

  it('paints the sleeves of a raglan in the second cloth, and in the first where there is none', () => {
    const chart = starterChart('raglan-adult');
    if (!chart) throw new Error('no raglan chart');
    const fills = (secondHex?: string) => {
      const blank = blankFromChart(chart, 'raglan', 'Raglan', '');
      const cloth = {
        name: 'White',
        hex: '#FFFFFF',
        heather: false,
        ...(secondHex && { secondHex, secondName: 'Navy' }),
      };
      const garment = garmentSchema.parse({ garmentId: 'r', name: 'R', cloth, blanks: [blank], counts: [] });
      const key = {
        garmentId: 'r',
        size: { blankId: 'raglan', sizeId: 'M' },
        side: 'leftSleeve',
        lineId: null,
      } as const;
      const [sleeve] = composeScene({ garments: [garment], prints: [] }, key).shapes;
      return sleeve?.kind === 'path' ? sleeve.fill : null;
    };
    expect([fills('#20344F'), fills()]).toEqual(['#20344F', '#FFFFFF']);
  });

  it('has every size and side of a garment within one frame', () => {
    const scenes = sizes.flatMap((_, index) => [
      composeScene(layout, keyFor(index, 'front')),
      composeScene(layout, keyFor(index, 'back')),
    ]);
    const { box, widthPx, heightPx } = pictureFrame(scenes);
    expect(box.x + box.width).toBeCloseTo(-box.x, 6);
    for (const { box: each } of scenes) {
      expect(each.x).toBeGreaterThan(box.x);
      expect(each.y).toBeGreaterThan(box.y);
      expect(each.y + each.height).toBeLessThan(box.y + box.height);
    }
    expect(heightPx / widthPx).toBeCloseTo(box.height / box.width, 2);
    expect(commonBox(scenes, 0).width).toBeLessThan(box.width);
  });

  it('keeps its seams apart from the cloth on any colour', () => {
    for (const hex of ['#FFFFFF', '#111111', '#20344F', '#808080', '#F2B632']) {
      const scene = composeScene(
        { ...layout, garments: [{ ...tee, cloth: { name: hex, hex, heather: false } }] },
        keyFor(7, 'front'),
      );
      const strokes = scene.shapes.flatMap((shape) =>
        shape.kind === 'path' && shape.stroke ? [shape.stroke.hex] : [],
      );
      const seam = strokes.find((each) => each !== hex) ?? hex;
      const [light, dark] = [hex, seam].map(relativeLuminance).sort((a, b) => b - a);
      expect(((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05), `${seam} on ${hex}`).toBeGreaterThan(1.15);
    }
  });
});

describe('tapes', () => {
  it.each(TEE_LOCATIONS)('are as long as what they read at %s', (locationId) => {
    const only = teeWithPrints([locationId]);
    const [print] = only.prints;
    if (!print) throw new Error('no print');
    for (const offered of sizes) {
      const key = keyOf(offered);
      const tapes = tapesFor(print, key, flatOf(offered.blank.kind, offered.size, print.side));
      for (const { from, to, um } of tapes) {
        expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo(Math.abs(um) / 1000, 3);
      }
      const group = groupFor(print, key);
      expect(tapes.map(({ reading }) => reading)).toEqual(
        group.acrossUm === 0 ? ['drop', 'width'] : ['drop', 'width', 'across'],
      );
    }
  });

  it('carry their reading in the unit asked for, over everything else', () => {
    const spoken = (unit: 'in' | 'cm') => {
      const [first] = frozenScenes({ ...layout, prints: layout.prints.slice(0, 1) }, unit, squareLetters);
      return first?.scene.shapes.flatMap((shape) => (shape.kind === 'glyphs' ? [shape.text] : []));
    };
    expect(spoken('in')).toEqual(['2 1/2 in', '7 1/2 in']);
    expect(spoken('cm')).toEqual(['6.4 cm', '19.1 cm']);
  });

  it('lie above a sleeve print but for the drop, which runs from the hem up to its foot', () => {
    const [print] = teeWithPrints(['leftSleeve']).prints;
    const offered = sizes[7];
    if (!print || !offered) throw new Error('the sample is empty');
    const flat = flatOf(offered.blank.kind, offered.size, 'leftSleeve');
    const [drop, width] = tapesFor(print, keyOf(offered), flat);
    const { inkBox } = placedPrint(print, keyOf(offered), flat);
    expect(drop?.from.y).toBeCloseTo(pointOf(flat, 'sleeveHemFold').y, 6);
    expect(drop?.to.y).toBeCloseTo(inkBox.y + inkBox.height, 6);
    expect(drop?.um).toBeGreaterThan(0);
    expect(width?.from.y).toBeLessThan(inkBox.y);
  });

  it('are drawn without words where none can be set', () => {
    const [print] = layout.prints;
    const offered = sizes[0];
    if (!print || !offered) throw new Error('the sample is empty');
    const [drop] = tapesFor(print, keyOf(offered), flatOf(offered.blank.kind, offered.size, 'front'));
    if (!drop) throw new Error('no tape');
    expect(tapeShapes(drop, 'in', '#FFFFFF').every(({ kind }) => kind === 'path')).toBe(true);
  });
});
