import { describe, expect, it } from 'vitest';
import { type LayoutDocument, layoutDocumentSchema } from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import { placePairs, startingPoints } from '@/lib/domain/layout/photograph';
import {
  hasPhotographs,
  photographUnder,
  type ShopPhotograph,
  sceneOnPhotograph,
  withoutPhotographs,
  withPhotographs,
  withPhotographsReset,
} from '@/lib/domain/layout/photograph-scene';
import { composeScene, flatOf } from '@/lib/domain/layout/scene';
import { garmentOf, sizeOf } from '@/lib/domain/layout/sizes';
import { canonicalBytes, type JsonValue, sha256Hex } from '@/lib/domain/revision/canonical';
import { layoutPart } from '@/lib/domain/revision/envelope';
import { frozenScenes } from '@/lib/domain/revision/frozen-scenes';
import { teeWithPrints } from './sample-layout';

const SIZE = { blankId: 'crew-tee-adult', sizeId: 'M' };
const picture = { widthPx: 1_800, heightPx: 2_400 };
const outline = () => ({ d: 'M0 0Z', widthMm: 10 });

function tee(): LayoutDocument {
  const layout = teeWithPrints(['fullFront']);
  return {
    ...layout,
    garments: layout.garments.map((garment) => ({
      ...garment,
      blanks: garment.blanks.map((blank) => ({ ...blank, shopBlankId: `shop ${blank.blankId}` })),
    })),
  };
}

function photograph(layout: LayoutDocument, change: Partial<ShopPhotograph> = {}): ShopPhotograph {
  const { blank, size } = sizeOf(garmentOf(layout, 'tee'), SIZE);
  const flat = flatOf(blank.kind, size, 'front');
  const [places] = placePairs(flat);
  return {
    shopBlankId: 'shop crew-tee-adult',
    sha256: 'b'.repeat(64),
    ...picture,
    side: 'front',
    sizeId: 'M',
    colourName: 'Navy',
    setting: { places: [...places], points: startingPoints(places, picture, flat), check: null },
    ...change,
  };
}

function carrying(layout: LayoutDocument, ...photographs: ShopPhotograph[]): LayoutDocument {
  return { ...layout, garments: layout.garments.map((garment) => withPhotographs(garment, photographs)) };
}

const hash = (layout: LayoutDocument) =>
  sha256Hex(canonicalBytes(layoutPart(layoutDocumentSchema.parse(layout)) as unknown as JsonValue));
const key = { garmentId: 'tee', size: SIZE, side: 'front', lineId: null } as const;

describe('photographs of a garment', () => {
  it('are taken up by blank, size and colour, and found under their drawing alone', () => {
    const layout = tee();
    const others = [
      photograph(layout, { shopBlankId: 'another' }),
      photograph(layout, { colourName: 'White' }),
      photograph(layout, { sizeId: 'gone' }),
    ];
    expect(carrying(layout, ...others)).toEqual(layout);
    const taken = carrying(layout, ...others, photograph(layout));
    expect(photographUnder(taken, key)?.sha256).toBe('b'.repeat(64));
    expect(photographUnder(taken, { ...key, side: 'back' })).toBeNull();
    expect(photographUnder(taken, { ...key, size: { ...SIZE, sizeId: 'L' } })).toBeNull();
    expect(photographUnder(taken, { ...key, size: { ...SIZE, blankId: 'crew-tee-youth' } })).toBeNull();
    expect(layoutDocumentSchema.parse(taken)).toEqual(taken);
  });

  it('leave the bytes of a layout without any as they were, and are put away again whole', () => {
    const layout = tee();
    const taken = carrying(layout, photograph(layout));
    expect(hash(taken)).not.toBe(hash(layout));
    expect(JSON.stringify(layout)).not.toContain('photographs');
    const away = { ...taken, garments: taken.garments.map(withoutPhotographs) };
    expect(hash(away)).toBe(hash(layout));
  });

  it('are set anew by the measures of a chart that was taken anew, and only where they were shown', () => {
    const layout = tee();
    const ids = { garmentId: 'tee', blankId: 'crew-tee-adult' };
    const longer = (of: LayoutDocument): LayoutDocument => ({
      ...of,
      garments: of.garments.map((garment) => ({
        ...garment,
        blanks: garment.blanks.map((blank) => ({
          ...blank,
          sizes: blank.sizes.map((size) => ({
            ...size,
            measuresUm: { ...size.measuresUm, bodyLength: (size.measuresUm.bodyLength ?? 0) + 25_400 },
          })),
        })),
      })),
    });
    const shop = [photograph(layout)];
    const before = photographUnder(carrying(layout, ...shop), key);
    const after = photographUnder(withPhotographsReset(longer(carrying(layout, ...shop)), ids, shop), key);
    const [, b] = shop[0]?.setting.points ?? [];
    if (!(before && after && b)) throw new Error('no photograph');
    const down = ({ matrix }: typeof before) => matrix[1] * b.x + matrix[3] * b.y + matrix[5];
    expect(down(after) - down(before)).toBeCloseTo(25.4, 3);
    expect(withPhotographsReset(longer(layout), ids, shop)).toEqual(longer(layout));
    expect(withPhotographsReset(carrying(layout, ...shop), ids, [])).toEqual(layout);
  });

  it('are not shown while the garment is of another colour', () => {
    const layout = tee();
    const taken = carrying(layout, photograph(layout));
    const inWhite = taken.garments.map((garment) => ({
      ...garment,
      cloth: { name: 'White', hex: '#FFFFFF', heather: false },
    }));
    expect(photographUnder({ garments: inWhite }, key)).toBeNull();
    expect(inWhite.some(hasPhotographs)).toBe(false);
    expect(taken.garments.some(hasPhotographs)).toBe(true);
  });
});

it('a photograph of a size there is not makes a layout no whole one', () => {
  const layout = carrying(tee(), photograph(tee()));
  expect(layoutFault(layout)).toBeNull();
  const broken = structuredClone(layout);
  for (const blank of broken.garments.flatMap(({ blanks }) => blanks)) {
    for (const each of blank.photographs ?? []) each.sizeId = 'gone';
  }
  expect(layoutFault(broken)).toBe('unknownSize');
});

describe('a scene on a photograph', () => {
  it('has the photograph in place of the cloth, and prints and tapes exactly where they were', () => {
    const layout = tee();
    const taken = carrying(layout, photograph(layout));
    const under = photographUnder(taken, key);
    if (!under) throw new Error('no photograph');
    const frozen = frozenScenes(taken, 'in', outline);
    const scene = frozen.find(({ key: each }) => each.size.sizeId === 'M' && each.side === 'front')?.scene;
    if (!scene) throw new Error('no front of M');
    const on = sceneOnPhotograph(scene, under);
    expect(on.shapes[0]).toMatchObject({ kind: 'photograph', layer: 'cloth', matrix: under.matrix });
    expect(on.shapes.slice(1)).toEqual(scene.shapes.filter(({ layer }) => layer !== 'cloth'));
    expect(on.shapes.some(({ kind }) => kind === 'image')).toBe(true);
  });

  it('never changes what is sealed: the drawn scenes are the same with a photograph and without', () => {
    const layout = tee();
    const taken = carrying(layout, photograph(layout));
    expect(composeScene(taken, key)).toEqual(composeScene(layout, key));
    expect(frozenScenes(taken, 'in', outline).map(({ sha256 }) => sha256)).toEqual(
      frozenScenes(layout, 'in', outline).map(({ sha256 }) => sha256),
    );
  });
});
