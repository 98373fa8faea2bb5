import type { SizeGroup } from './document';

/** What a size group says of its sizes. */
export type GroupReadings = Pick<SizeGroup, 'widthUm' | 'dropUm' | 'acrossUm' | 'capHeightUm'>;

/** Whether two size groups say the same of their sizes: they are then one transfer, at one place. */
export function readAlike(a: GroupReadings, b: GroupReadings): boolean {
  return (
    a.widthUm === b.widthUm && a.dropUm === b.dropUm && a.acrossUm === b.acrossUm && a.capHeightUm === b.capHeightUm
  );
}

/** The letter height of a group as it is taken over into another: nothing for a picture. */
export function lettersOf({ capHeightUm }: Pick<SizeGroup, 'capHeightUm'>): Pick<SizeGroup, 'capHeightUm'> {
  return capHeightUm === undefined ? {} : { capHeightUm };
}
