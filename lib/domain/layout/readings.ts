import type { Micrometres } from '../measure/length';
import type { Print, SizeGroup } from './document';
import { type InkEdge, LOCATIONS, type Location } from './locations';
import { inkHeightUm } from './placement';

/** Where a print sits to the side of the centre line. */
export type AcrossReading = { readonly towards: 'centre' | 'wearersLeft' | 'wearersRight'; readonly um: Micrometres };

/** Everything the tape says about a print on one size group: codes and lengths, put in words by the catalogue. */
export type PrintReading = {
  readonly widthUm: Micrometres;
  readonly heightUm: Micrometres;
  readonly dropUm: Micrometres;
  readonly measuredFrom: Location['measuredFrom'];
  readonly edge: InkEdge;
  readonly across: AcrossReading;
};

/** What the tape reads for a print in one of its size groups. */
export function printReading(
  print: Pick<Print, 'content' | 'locationId'>,
  group: Pick<SizeGroup, 'widthUm' | 'dropUm' | 'acrossUm'>,
): PrintReading {
  const { measuredFrom, edge } = LOCATIONS[print.locationId];
  return {
    widthUm: group.widthUm,
    heightUm: inkHeightUm(print.content.art, group.widthUm),
    dropUm: group.dropUm,
    measuredFrom,
    edge,
    across: acrossReading(group.acrossUm),
  };
}

/** A signed distance from the centre line as it is said. */
export function acrossReading(acrossUm: Micrometres): AcrossReading {
  if (acrossUm === 0) return { towards: 'centre', um: 0 };
  return acrossUm > 0 ? { towards: 'wearersLeft', um: acrossUm } : { towards: 'wearersRight', um: -acrossUm };
}
