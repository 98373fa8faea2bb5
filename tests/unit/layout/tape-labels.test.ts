import { describe, expect, it } from 'vitest';
import { sidesOf } from '@/lib/domain/garment/kinds';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import { boxAround } from '@/lib/domain/geometry/box';
import { garmentSchema, type LayoutDocument } from '@/lib/domain/layout/document';
import { blankFromChart } from '@/lib/domain/layout/garment-edits';
import { locationsFitting } from '@/lib/domain/layout/locations';
import { pictureFrame } from '@/lib/domain/layout/picture-frame';
import { flatOf, placedPrint, type Scene } from '@/lib/domain/layout/scene';
import { startingGroups } from '@/lib/domain/layout/starting-groups';
import { type OutlineText, tapeScale } from '@/lib/domain/layout/tape';
import { sceneWithTapes } from '@/lib/domain/revision/frozen-scenes';
import { chainsOf } from '../garment/rings';
import { LEAF } from './sample-layout';

/** Stands in for a typeface: every letter a box, as wide as letters are on average. */
const boxedLetters: OutlineText = (text, capHeightMm, { x, y }) => {
  const widthMm = text.length * capHeightMm * 0.75;
  return { widthMm, d: `M${x} ${y}L${x + widthMm} ${y}L${x + widthMm} ${y - capHeightMm}L${x} ${y - capHeightMm}Z` };
};

const places = STARTER_CHARTS.flatMap((chart) => {
  const blank = blankFromChart(chart, chart.id, chart.id, '');
  return sidesOf(chart.kind).flatMap((side) =>
    locationsFitting(side, [blank]).map(({ id }) => ({ name: `${chart.id}, ${id}`, blank, side, locationId: id })),
  );
});

function withOnePrint({ blank, side, locationId }: (typeof places)[number]): LayoutDocument {
  const cloth = { name: 'Navy', hex: '#20344F', heather: false };
  const garment = garmentSchema.parse({ garmentId: 'g', name: 'G', cloth, blanks: [blank], counts: [] });
  const sizeGroups = startingGroups(locationId, [garment], LEAF, () => 'group');
  if (!sizeGroups) throw new Error(`${locationId} has no starting sizes`);
  const print = { printId: 'p', name: 'Leaf', garmentIds: ['g'], side, locationId, turnCentideg: 0, sizeGroups };
  return {
    format: 1,
    garments: [garment],
    prints: [{ ...print, content: { kind: 'art', art: LEAF } }],
    people: { columns: [], lines: [] },
    alternatives: [],
    price: null,
    notes: '',
    statement: '',
  };
}

/** The cards readings stand on: the shape painted under each run of letters. */
function cardsOf({ shapes }: Pick<Scene, 'shapes'>) {
  return shapes.flatMap((shape, index) => {
    const under = shapes[index - 1];
    return shape.kind === 'glyphs' && under?.kind === 'path' ? [boxAround(chainsOf(under.d).flat())] : [];
  });
}

describe('readings on tapes', () => {
  it.each(places)('cover no ink and stay inside the picture on every size: $name', (place) => {
    const layout = withOnePrint(place);
    const [print] = layout.prints;
    if (!print) throw new Error('no print');
    const scenes = place.blank.sizes.map((size) => {
      const key = { blankId: place.blank.blankId, sizeId: size.sizeId };
      const scene = sceneWithTapes(
        layout,
        { garmentId: 'g', size: key, side: place.side, lineId: null },
        'in',
        boxedLetters,
      );
      return { size, scene, ink: placedPrint(print, key, flatOf(place.blank.kind, size, place.side)).inkBox };
    });
    const { box } = pictureFrame(scenes.map(({ scene }) => scene));
    for (const { size, scene, ink } of scenes) {
      const cards = cardsOf(scene);
      expect(cards.length, size.label).toBeGreaterThanOrEqual(2);
      for (const card of cards) {
        const apart =
          card.x + card.width <= ink.x ||
          card.x >= ink.x + ink.width ||
          card.y + card.height <= ink.y ||
          card.y >= ink.y + ink.height;
        expect(apart, `${size.label}: ${JSON.stringify({ card, ink })}`).toBe(true);
        expect(card.x, size.label).toBeGreaterThanOrEqual(box.x);
        expect(card.y, size.label).toBeGreaterThanOrEqual(box.y);
        expect(card.x + card.width, size.label).toBeLessThanOrEqual(box.x + box.width);
        expect(card.y + card.height, size.label).toBeLessThanOrEqual(box.y + box.height);
      }
    }
  });

  it('are in proportion to what the picture shows', () => {
    expect(tapeScale({ width: 920, height: 700 })).toBe(1);
    expect(tapeScale({ width: 230, height: 160 })).toBe(0.25);
    expect(tapeScale({ width: 10, height: 10 })).toBeGreaterThan(0);
  });
});
