import type { Side } from '../garment/flat';
import type { AgeBand, GarmentKind } from '../garment/kinds';
import { inches, mirroredStart, type StartingByBand, type StartingValues } from './starting-values';

/** Named spots for a print. */
export const LOCATION_IDS = [
  'fullFront',
  'centreChest',
  'leftChest',
  'rightChest',
  'upperBack',
  'fullBack',
  'backNeck',
  'abovePocket',
  'frontNumber',
  'backNumber',
  'leftSleeve',
  'rightSleeve',
  'leg',
  'legBack',
  'capFront',
  'apronBib',
  'toteFront',
  'toteBack',
  'panelFront',
  'panelBack',
] as const;
export type LocationId = (typeof LOCATION_IDS)[number];

/** What of the turned ink's box the drop is taken to. */
export const INK_EDGES = ['top', 'middle', 'bottom'] as const;
export type InkEdge = (typeof INK_EDGES)[number];

/** The points of a flat that a drop is measured from. */
export const MEASURED_FROM = [
  'collarSeamCentre',
  'highPointShoulder',
  'sleeveHemFold',
  'outseamTop',
  'brimSeamCentre',
  'bibTopCentre',
  'topEdgeCentre',
] as const;
export type MeasuredFrom = (typeof MEASURED_FROM)[number];

/** Whose directions across is said in: the wearer's, a sleeve's front and back, or those of who looks at it. */
export const ACROSS_IN = ['wearer', 'sleeve', 'viewer'] as const;
export type AcrossIn = (typeof ACROSS_IN)[number];

export type Location = {
  readonly id: LocationId;
  readonly side: Side;
  readonly measuredFrom: MeasuredFrom;
  /** Which way the tape runs from there: a sleeve and a cap are measured up, so their drops are negative. */
  readonly direction: 'down' | 'up';
  readonly edge: InkEdge;
  readonly acrossIn: AcrossIn;
  /** The kinds of garment that have it. */
  readonly kinds: readonly GarmentKind[];
  readonly starting: StartingByBand;
  /** Starting values of kinds that differ; a band left out there does not suit the kind. */
  readonly byKind?: Readonly<Partial<Record<GarmentKind, StartingByBand>>>;
};

const TEES = ['crewTee', 'vNeckTee', 'longSleeveTee', 'raglan', 'tank', 'fittedTee'] as const;
const ADULT_TOPS = [...TEES, 'crewSweatshirt', 'pulloverHood', 'zipHood', 'polo'] as const;
const CLOSED_TOPS = [...TEES, 'crewSweatshirt', 'pulloverHood', 'infantBodysuit'] as const;
const SLEEVED = ADULT_TOPS.filter((kind) => kind !== 'tank');

/** Knitted cuffs take the place of the usual sleeve print: it goes above them. */
const ABOVE_CUFF: StartingByBand = { adult: inches(2.5, 3.5, -3.5), youth: inches(2, 2.5, -2.75) };

const onChest = { measuredFrom: 'collarSeamCentre', direction: 'down', edge: 'top', acrossIn: 'wearer' } as const;

/**
 * Starting values: common practice, no source. Full front sits four fingers (3 in) below the collar on an adult, centred
 * between the armholes. Every value can be changed on the layout table.
 */
export const LOCATIONS: Readonly<Record<LocationId, Location>> = {
  fullFront: {
    id: 'fullFront',
    side: 'front',
    ...onChest,
    kinds: CLOSED_TOPS,
    starting: {
      adult: inches(10, 13, 3),
      youth: inches(7.5, 10, 2.5),
      toddler: inches(5, 6, 1.75),
      infant: inches(4.5, 5.5, 1.5),
    },
    byKind: {
      vNeckTee: { adult: inches(10, 13, 2), youth: inches(7.5, 10, 1.75) },
      pulloverHood: { adult: inches(10, 10, 2.5), youth: inches(7.5, 5, 2.5) },
      raglan: {
        adult: inches(10, 13, 3),
        youth: inches(7.5, 10, 2.5),
        toddler: inches(5, 6, 1.75),
        infant: inches(4, 5, 1.5),
      },
    },
  },
  centreChest: {
    id: 'centreChest',
    side: 'front',
    ...onChest,
    kinds: CLOSED_TOPS,
    starting: {
      adult: inches(7, 6, 3),
      youth: inches(5.5, 5, 2.5),
      toddler: inches(4, 4, 1.5),
      infant: inches(4, 4, 1.5),
    },
    byKind: {
      pulloverHood: {
        adult: inches(7, 6, 3),
        youth: inches(5.5, 5, 2.5),
        toddler: inches(3.5, 3.25, 1.5),
        infant: inches(3, 2.5, 1.5),
      },
    },
  },
  leftChest: chest('leftChest', 1),
  rightChest: chest('rightChest', -1),
  upperBack: {
    id: 'upperBack',
    side: 'back',
    ...onChest,
    kinds: ADULT_TOPS,
    starting: { adult: inches(10, 2.5, 3.5), youth: inches(8, 2, 2.5) },
    byKind: {
      ...onHoods({ adult: inches(10, 2.5, 9.5), youth: inches(8, 2, 7.75) }),
      raglan: { adult: inches(8.75, 2.5, 3.5), youth: inches(6.5, 2, 2.5) },
    },
  },
  fullBack: {
    id: 'fullBack',
    side: 'back',
    ...onChest,
    kinds: [...ADULT_TOPS, 'infantBodysuit'],
    starting: {
      adult: inches(11, 14, 4),
      youth: inches(8.5, 11, 3),
      toddler: inches(5.5, 7, 2),
      infant: inches(4.5, 6, 2),
    },
    byKind: {
      ...onHoods({ adult: inches(11, 12, 9.5), youth: inches(8, 7.5, 7.75) }),
      raglan: { adult: inches(9.5, 14, 4), youth: inches(7.25, 11, 3) },
      tank: { adult: inches(10, 14, 4) },
      fittedTee: {
        adult: inches(11, 14, 4),
        youth: inches(8.5, 11, 3),
        toddler: inches(5.5, 7, 2),
        infant: inches(4, 6, 2),
      },
    },
  },
  backNeck: {
    id: 'backNeck',
    side: 'back',
    ...onChest,
    kinds: ADULT_TOPS,
    starting: { adult: inches(2.5, 2, 1), youth: inches(1.5, 1.5, 0.75) },
    byKind: {
      ...onHoods({ adult: inches(2.5, 2, 9.5), youth: inches(1.5, 1.5, 7.75) }),
      polo: { adult: inches(2.5, 2, 2.25), youth: inches(1.5, 1.5, 2) },
    },
  },
  abovePocket: {
    id: 'abovePocket',
    side: 'front',
    ...onChest,
    kinds: ['pulloverHood'],
    starting: { adult: inches(10, 9, 2.5), youth: inches(7.5, 5, 2.5) },
  },
  frontNumber: {
    id: 'frontNumber',
    side: 'front',
    ...onChest,
    kinds: [...TEES, 'crewSweatshirt'],
    starting: { adult: inches(6, 4, 8), youth: inches(4.5, 3, 6.5) },
  },
  backNumber: {
    id: 'backNumber',
    side: 'back',
    ...onChest,
    kinds: ADULT_TOPS,
    starting: { adult: inches(10, 10, 7), youth: inches(7, 6, 5.5) },
    byKind: onHoods({ adult: inches(9, 9, 13), youth: inches(6, 4.75, 10.75) }),
  },
  leftSleeve: sleeve('leftSleeve'),
  rightSleeve: sleeve('rightSleeve'),
  leg: leg('leg', 'front'),
  legBack: leg('legBack', 'back'),
  capFront: {
    id: 'capFront',
    side: 'front',
    measuredFrom: 'brimSeamCentre',
    direction: 'up',
    edge: 'bottom',
    acrossIn: 'wearer',
    kinds: ['capFront'],
    starting: { adult: inches(4, 2, -0.75), youth: inches(3.25, 1.75, -0.75) },
  },
  apronBib: {
    id: 'apronBib',
    side: 'front',
    measuredFrom: 'bibTopCentre',
    direction: 'down',
    edge: 'top',
    acrossIn: 'wearer',
    kinds: ['apron'],
    starting: { adult: inches(7, 6, 2.5), youth: inches(5, 4, 2) },
  },
  toteFront: panel('toteFront', 'front', 'tote', inches(9, 9, 3)),
  toteBack: panel('toteBack', 'back', 'tote', inches(9, 9, 3)),
  panelFront: panel('panelFront', 'front', 'plainPanel', inches(8, 8, 2)),
  panelBack: panel('panelBack', 'back', 'plainPanel', inches(8, 8, 2)),
};

function chest(id: 'leftChest' | 'rightChest', towards: 1 | -1): Location {
  const sided = (bands: StartingByBand) => (towards === 1 ? bands : mirroredStart(bands));
  return {
    id,
    side: 'front',
    measuredFrom: 'highPointShoulder',
    direction: 'down',
    edge: 'middle',
    acrossIn: 'wearer',
    kinds: ADULT_TOPS,
    starting: sided({ adult: inches(3.5, 4, 8, 4, 5), youth: inches(2.75, 3, 6, 3) }),
    byKind: {
      raglan: sided({ adult: inches(3, 3.5, 8, 3.5, 4.25), youth: inches(2.5, 2.5, 6, 2.5) }),
      tank: sided({ adult: inches(3, 3, 9.5, 3.5, 4) }),
      // Their necks are wide for their chests.
      vNeckTee: sided({ adult: inches(3.5, 4, 8, 4, 5), youth: inches(2.75, 2.5, 6.5, 3) }),
      fittedTee: sided({ adult: inches(3.5, 4, 8, 4, 5), youth: inches(2.5, 2.5, 7, 3.25) }),
      polo: sided({ adult: inches(3.5, 3.5, 8.25, 4, 5), youth: inches(2.5, 2.5, 7, 3) }),
    },
  };
}

function sleeve(id: 'leftSleeve' | 'rightSleeve'): Location {
  return {
    id,
    side: id,
    measuredFrom: 'sleeveHemFold',
    direction: 'up',
    edge: 'bottom',
    acrossIn: 'sleeve',
    kinds: SLEEVED,
    starting: { adult: inches(3, 3, -1.25), youth: inches(2, 2, -1) },
    byKind: {
      fittedTee: { adult: inches(2.5, 2.5, -1) },
      polo: { adult: inches(2.5, 2.5, -1.75), youth: inches(2, 2, -1.5) },
      longSleeveTee: ABOVE_CUFF,
      crewSweatshirt: ABOVE_CUFF,
      pulloverHood: ABOVE_CUFF,
      zipHood: ABOVE_CUFF,
    },
  };
}

/** The hood lies over the upper back: prints there go below it. */
function onHoods(bands: StartingByBand): NonNullable<Location['byKind']> {
  return { pulloverHood: bands, zipHood: bands };
}

function leg(id: 'leg' | 'legBack', side: Side): Location {
  return {
    id,
    side,
    measuredFrom: 'outseamTop',
    direction: 'down',
    edge: 'top',
    acrossIn: 'wearer',
    kinds: ['joggerLeg'],
    starting: { adult: inches(3.5, 6, 9), youth: inches(3, 5, 7) },
  };
}

function panel(id: LocationId, side: Side, kind: GarmentKind, adult: StartingValues): Location {
  return {
    id,
    side,
    measuredFrom: 'topEdgeCentre',
    direction: 'down',
    edge: 'top',
    acrossIn: 'viewer',
    kinds: [kind],
    starting: { adult },
  };
}

/** What a kind of garment is cut as: which locations suit it depends on both. */
export type KindAndBand = { readonly kind: GarmentKind; readonly ageBand: AgeBand };

/** What a print starts with at a location on a kind of garment for an age band; null where the location does not suit it. */
export function startingValues(locationId: LocationId, { kind, ageBand }: KindAndBand): StartingValues | null {
  const { kinds, starting, byKind } = LOCATIONS[locationId];
  if (!kinds.includes(kind)) return null;
  return (byKind?.[kind] ?? starting)[ageBand] ?? null;
}

/** The locations on a side that suit every one of these garments, in the order a maker looks for them. */
export function locationsFitting(side: Side, garments: readonly KindAndBand[]): Location[] {
  return LOCATION_IDS.map((id) => LOCATIONS[id]).filter(
    (location) => location.side === side && garments.every((each) => startingValues(location.id, each) !== null),
  );
}

/** The same for crew tees of these age bands. */
export function locationsOn(side: Side, ageBands: readonly AgeBand[]): Location[] {
  return locationsFitting(
    side,
    ageBands.map((ageBand) => ({ kind: 'crewTee', ageBand })),
  );
}
