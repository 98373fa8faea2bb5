import type { Side } from '../garment/flat';
import type { AgeBand } from '../garment/kinds';
import { type Micrometres, umFromInches } from '../measure/length';

/** Named spots for a print. */
export const LOCATION_IDS = [
  'fullFront',
  'centreChest',
  'leftChest',
  'rightChest',
  'upperBack',
  'fullBack',
  'backNeck',
] as const;
export type LocationId = (typeof LOCATION_IDS)[number];

/** What of the turned ink's box the drop is taken to. */
export const INK_EDGES = ['top', 'middle', 'bottom'] as const;
export type InkEdge = (typeof INK_EDGES)[number];

/** The points of a flat that a drop is measured from. */
export const MEASURED_FROM = ['collarSeamCentre', 'highPointShoulder'] as const;
export type MeasuredFrom = (typeof MEASURED_FROM)[number];

/** Size and place a print starts with. `acrossUm` is positive towards the wearer's left. `tallestUm` caps a tall picture. */
export type StartingValues = {
  readonly widthUm: Micrometres;
  readonly tallestUm: Micrometres;
  readonly dropUm: Micrometres;
  readonly acrossUm: Micrometres;
};

export type Location = {
  readonly id: LocationId;
  readonly side: Side;
  readonly measuredFrom: MeasuredFrom;
  readonly edge: InkEdge;
  readonly starting: Readonly<Partial<Record<AgeBand, StartingValues>>>;
  /** Wider garments, from this chest width up, start with another distance across. */
  readonly wide?: { readonly fromChestUm: Micrometres; readonly acrossUm: Micrometres };
};

/** Chest width from which a left or right chest print moves out: 2XL of a common adult chart (common practice, no source). */
const WIDE_FROM_CHEST_UM = umFromInches(25);

function inches(width: number, tallest: number, drop: number, across = 0): StartingValues {
  return {
    widthUm: umFromInches(width),
    tallestUm: umFromInches(tallest),
    dropUm: umFromInches(drop),
    acrossUm: umFromInches(across),
  };
}

/**
 * Starting values: common practice, no source. Full front sits four fingers (3 in) below the collar on an adult, centred
 * between the armholes. Every value can be changed on the layout table.
 */
export const LOCATIONS: Readonly<Record<LocationId, Location>> = {
  fullFront: {
    id: 'fullFront',
    side: 'front',
    measuredFrom: 'collarSeamCentre',
    edge: 'top',
    starting: {
      adult: inches(10, 13, 3),
      youth: inches(7.5, 10, 2.5),
      toddler: inches(5, 6, 1.75),
      infant: inches(4.5, 5.5, 1.5),
    },
  },
  centreChest: {
    id: 'centreChest',
    side: 'front',
    measuredFrom: 'collarSeamCentre',
    edge: 'top',
    starting: {
      adult: inches(7, 6, 3),
      youth: inches(5.5, 5, 2.5),
      toddler: inches(4, 4, 1.5),
      infant: inches(4, 4, 1.5),
    },
  },
  leftChest: chest('leftChest', 1),
  rightChest: chest('rightChest', -1),
  upperBack: {
    id: 'upperBack',
    side: 'back',
    measuredFrom: 'collarSeamCentre',
    edge: 'top',
    starting: { adult: inches(10, 2.5, 3.5), youth: inches(8, 2, 2.5) },
  },
  fullBack: {
    id: 'fullBack',
    side: 'back',
    measuredFrom: 'collarSeamCentre',
    edge: 'top',
    starting: {
      adult: inches(11, 14, 4),
      youth: inches(8.5, 11, 3),
      toddler: inches(5.5, 7, 2),
      infant: inches(5, 6, 2),
    },
  },
  backNeck: {
    id: 'backNeck',
    side: 'back',
    measuredFrom: 'collarSeamCentre',
    edge: 'top',
    starting: { adult: inches(2.5, 2, 1), youth: inches(1.5, 1.5, 0.75) },
  },
};

function chest(id: 'leftChest' | 'rightChest', towards: 1 | -1): Location {
  return {
    id,
    side: 'front',
    measuredFrom: 'highPointShoulder',
    edge: 'middle',
    starting: { adult: inches(3.5, 4, 8, 4 * towards), youth: inches(2.75, 3, 6, 3 * towards) },
    wide: { fromChestUm: WIDE_FROM_CHEST_UM, acrossUm: umFromInches(5 * towards) },
  };
}

/** The locations on a side that make sense for every age band asked about, in the order a maker looks for them. */
export function locationsOn(side: Side, ageBands: readonly AgeBand[]): Location[] {
  return LOCATION_IDS.map((id) => LOCATIONS[id]).filter(
    (location) => location.side === side && ageBands.every((band) => location.starting[band] !== undefined),
  );
}
