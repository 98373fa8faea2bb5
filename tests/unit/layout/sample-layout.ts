import type { ArtRef } from '@/lib/domain/art/art-ref';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import { emptyLayout, type LayoutDocument } from '@/lib/domain/layout/document';
import { addGarment, blankFromChart, startingPrint } from '@/lib/domain/layout/garment-edits';
import { LOCATION_IDS, type LocationId, startingValues } from '@/lib/domain/layout/locations';

/** A picture of 1000 × 800 px whose ink is a slanted leaf well inside it. */
export const LEAF: ArtRef = {
  artId: 'leaf',
  sha256: 'a'.repeat(64),
  widthPx: 1000,
  heightPx: 800,
  inkBox: { x: 100, y: 50, width: 600, height: 500 },
  inkHull: [
    [100, 300],
    [300, 60],
    [650, 50],
    [700, 200],
    [420, 550],
  ],
};

/** Where a print can go on a crew tee for adults and youths. */
export const TEE_LOCATIONS = LOCATION_IDS.filter((id) =>
  (['adult', 'youth'] as const).every((ageBand) => startingValues(id, { kind: 'crewTee', ageBand })),
);

/** A navy tee in youth and adult sizes with a print at each location asked for. */
export function teeWithPrints(locationIds: readonly LocationId[], art: ArtRef = LEAF): LayoutDocument {
  let next = 0;
  const newId = () => {
    next += 1;
    return `id-${next}`;
  };
  const blanks = ['crew-tee-youth', 'crew-tee-adult'].map((id) => {
    const chart = starterChart(id);
    if (!chart) throw new Error(`no chart ${id}`);
    return blankFromChart(chart, id, id, 'Cotton');
  });
  const cloth = { name: 'Navy', hex: '#20344F', heather: false };
  const start = addGarment(emptyLayout('Placed by hand.'), {
    garmentId: 'tee',
    name: 'Tee',
    cloth,
    blanks,
    counts: [],
  });
  const prints = locationIds.map((locationId) => {
    const print = startingPrint(start, art, {
      printId: locationId,
      name: locationId,
      garmentIds: ['tee'],
      locationId,
      newId,
    });
    if (!print) throw new Error(`${locationId} does not suit a youth and adult tee`);
    return print;
  });
  return { ...start, prints };
}
