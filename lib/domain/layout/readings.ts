import { blockHeight } from '../lettering/set-lettering';
import type { Micrometres } from '../measure/length';
import type { Print, PrintContent, SizeGroup } from './document';
import { type InkEdge, LOCATIONS, type Location } from './locations';
import { acrossSign, inkHeightUm } from './placement';

/** Directions across: the wearer's; on a sleeve to its front and back; on a bag as one looks at it. */
export const ACROSS_TOWARDS = ['centre', 'wearersLeft', 'wearersRight', 'front', 'back', 'left', 'right'] as const;

/** Where a print sits to the side of the centre line. */
export type AcrossReading = { readonly towards: (typeof ACROSS_TOWARDS)[number]; readonly um: Micrometres };

/** Everything the tape says about a print on one size group: codes and lengths, put in words by the catalogue. */
export type PrintReading = {
  /** Of lettering the most it may take across. */
  readonly widthUm: Micrometres;
  readonly heightUm: Micrometres;
  /** How tall the letters are; there for lettering, and only there. */
  readonly capHeightUm?: Micrometres | undefined;
  readonly dropUm: Micrometres;
  readonly measuredFrom: Location['measuredFrom'];
  readonly edge: InkEdge;
  readonly across: AcrossReading;
};

/** What the tape reads for a print in one of its size groups. */
export function printReading(
  print: Pick<Print, 'content' | 'locationId'>,
  group: Pick<SizeGroup, 'widthUm' | 'dropUm' | 'acrossUm' | 'capHeightUm'>,
): PrintReading {
  const location = LOCATIONS[print.locationId];
  const { measuredFrom, edge } = location;
  const { capHeightUm } = group;
  return {
    widthUm: group.widthUm,
    heightUm: printHeightUm(print.content, group),
    ...(capHeightUm !== undefined && { capHeightUm }),
    dropUm: group.dropUm,
    measuredFrom,
    edge,
    across: acrossReading(group.acrossUm, location),
  };
}

/** How tall a print is unturned: its ink; of lettering from the top of the first line's capitals to the foot of the last's. */
export function printHeightUm(
  content: PrintContent,
  { widthUm, capHeightUm }: Pick<SizeGroup, 'widthUm' | 'capHeightUm'>,
): Micrometres {
  if (content.kind === 'art') return inkHeightUm(content.art, widthUm);
  return Math.round(blockHeight(content.lettering, capHeightUm ?? 0));
}

/** A signed distance from the centre line as it is said at a location; in the wearer's directions where none is given. */
export function acrossReading(
  acrossUm: Micrometres,
  location: Pick<Location, 'acrossIn' | 'side'> = { acrossIn: 'wearer', side: 'front' },
): AcrossReading {
  if (acrossUm === 0) return { towards: 'centre', um: 0 };
  const [positive, negative] = directionsAcross(location);
  return acrossUm > 0 ? { towards: positive, um: acrossUm } : { towards: negative, um: -acrossUm };
}

/** The directions in which positive and negative across are said at a location. */
export function directionsAcross({ acrossIn, side }: Pick<Location, 'acrossIn' | 'side'>) {
  if (acrossIn === 'wearer') return ['wearersLeft', 'wearersRight'] as const;
  if (acrossIn === 'sleeve') return ['front', 'back'] as const;
  return acrossSign(side) > 0 ? (['right', 'left'] as const) : (['left', 'right'] as const);
}
