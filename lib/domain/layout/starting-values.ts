import type { AgeBand } from '../garment/kinds';
import { type Micrometres, umFromInches } from '../measure/length';

/** Size and place a print starts with. `acrossUm` is positive towards the wearer's left. `tallestUm` caps a tall picture. */
export type StartingValues = {
  readonly widthUm: Micrometres;
  readonly tallestUm: Micrometres;
  /** Signed: positive down from where it is measured from. */
  readonly dropUm: Micrometres;
  readonly acrossUm: Micrometres;
  /** The same on wide garments, from `WIDE_FROM_CHEST_UM` up, where it differs. */
  readonly wideAcrossUm?: Micrometres;
};

/** Chest width from which a left or right chest print moves out: 2XL of a common adult chart (common practice, no source). */
export const WIDE_FROM_CHEST_UM: Micrometres = umFromInches(25);

/** Starting values for the age bands a location suits. */
export type StartingByBand = Readonly<Partial<Record<AgeBand, StartingValues>>>;

/** Starting values in inches. */
export function inches(width: number, tallest: number, drop: number, across = 0, wideAcross?: number): StartingValues {
  return {
    widthUm: umFromInches(width),
    tallestUm: umFromInches(tallest),
    dropUm: umFromInches(drop),
    acrossUm: umFromInches(across),
    ...(wideAcross !== undefined && { wideAcrossUm: umFromInches(wideAcross) }),
  };
}

/** The same values for a print on the other side of the centre line. */
export function mirroredStart(bands: StartingByBand): StartingByBand {
  return Object.fromEntries(
    Object.entries(bands).map(([band, { wideAcrossUm, acrossUm, ...values }]) => [
      band,
      {
        ...values,
        acrossUm: -acrossUm + 0,
        ...(wideAcrossUm !== undefined && { wideAcrossUm: -wideAcrossUm }),
      },
    ]),
  );
}
