import { describe, expect, it } from 'vitest';
import type { Print } from '@/lib/domain/layout/document';
import { umFromInches } from '@/lib/domain/measure/length';
import { viewGarmentSchema } from '@/lib/domain/revision/view';
import { viewFit } from '@/lib/domain/revision/view-fit';
import { LEAF } from '../layout/sample-layout';

// A panel's lines are the edges of a rectangle, so every distance below is arithmetic.
const PANEL = { widthIn: 20, heightIn: 30 };
const SQUARE = { ...LEAF, inkBox: { x: 0, y: 0, width: 800, height: 800 }, inkHull: square(800) };

function square(side: number): [number, number][] {
  return [
    [0, 0],
    [side, 0],
    [side, side],
    [0, side],
  ];
}

function lying({ wideIn = 10, dropIn = 4, acrossIn = 0 }) {
  const key = { blankId: 'panel', sizeId: 'one' };
  const print: Print = {
    printId: 'square',
    name: 'Square',
    garmentIds: ['towel'],
    side: 'front',
    locationId: 'panelFront',
    content: { kind: 'art', art: SQUARE },
    turnCentideg: 0,
    sizeGroups: [
      {
        groupId: 'all',
        members: [key],
        widthUm: umFromInches(wideIn),
        dropUm: umFromInches(dropIn),
        acrossUm: umFromInches(acrossIn),
      },
    ],
  };
  const size = {
    sizeId: key.sizeId,
    label: 'One size',
    measuresUm: { panelWidth: umFromInches(PANEL.widthIn), panelHeight: umFromInches(PANEL.heightIn) },
    estimated: [],
  };
  const blank = {
    blankId: key.blankId,
    name: 'Towel',
    kind: 'plainPanel' as const,
    ageBand: 'adult' as const,
    fabric: 'Cotton',
    cutToleranceUm: { acrossUm: 0, longUm: 0 },
    sizes: [size],
  };
  return viewFit(print, { blank, size, quantity: 1 });
}

describe('how near a print comes to a seam', () => {
  it('is the distance of its ink to the nearest edge', () => {
    expect(lying({ acrossIn: 2 })).toEqual({ nearest: { line: 'sideSeam', um: umFromInches(3) }, stops: [] });
    expect(lying({ dropIn: 18 })).toEqual({ nearest: { line: 'hem', um: umFromInches(2) }, stops: [] });
  });

  it('leaves out the edge that its drop is measured from', () => {
    expect(lying({ wideIn: 6, dropIn: 2 }).nearest).toEqual({ line: 'sideSeam', um: umFromInches(7) });
  });

  it('is nothing where the ink crosses the edge, which is said as what stops it', () => {
    const { nearest, stops } = lying({ acrossIn: 6 });
    expect(nearest).toEqual({ line: 'sideSeam', um: 0 });
    expect(stops).toContainEqual({ kind: 'offGarment', line: null });
    expect(stops).toContainEqual({ kind: 'crossesSeam', line: 'sideSeam' });
  });
});

describe('what is kept of a garment', () => {
  it('is read from before it was said how prints lie', () => {
    const garment = {
      garmentId: 'towel',
      name: 'Towel',
      fabric: '',
      cloth: { name: 'White', hex: '#FFFFFF', heather: false },
      total: 1,
      widthPx: 1100,
      heightPx: 1500,
      sizes: [
        {
          blankId: 'panel',
          sizeId: 'one',
          ageBand: 'adult',
          label: 'One size',
          quantity: 1,
          chestUm: 1,
          sides: [
            {
              side: 'front',
              sceneSha256: '0',
              prints: [
                {
                  printId: 'square',
                  groupId: 'all',
                  name: 'Square',
                  locationId: 'panelFront',
                  reading: {
                    widthUm: 1,
                    heightUm: 1,
                    dropUm: 1,
                    measuredFrom: 'topEdgeCentre',
                    edge: 'top',
                    across: { towards: 'centre', um: 0 },
                  },
                },
              ],
            },
          ],
        },
      ],
    };
    expect(viewGarmentSchema.parse(garment)).toEqual(garment);
  });
});
