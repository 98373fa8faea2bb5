import type { Micrometres } from '../../measure/length';
import type { Spot } from '../art-facts';
import type { MendName } from '../mend/recipe';

/** Everything the check can find, in the order it is told where two weigh the same. */
export const FINDING_CODES = [
  'blurry',
  'whiteBox',
  'junk',
  'vanishes',
  'haze',
  'thinStrokes',
  'thinGaps',
  'tooLarge',
  'specks',
  'enlarged',
  'wholeRectangle',
  'colour',
  'emptyMargin',
] as const;
export type FindingCode = (typeof FINDING_CODES)[number];

/**
 * `stops`: a revision is not sent as it is, unless the maker goes ahead and the customer ticks it. `warns`: it will be seen
 * on the shirt. `notes`: good to know.
 */
export const SEVERITIES = ['stops', 'warns', 'notes'] as const;
export type Severity = (typeof SEVERITIES)[number];

/** A cloth that part of the ink cannot be told from. */
export type VanishingCloth = {
  readonly name: string;
  readonly hex: string;
  /** Of the ink. */
  readonly share: number;
  /** The colours of the ink that are too near, most of it first. */
  readonly colours: readonly string[];
};

/** The numbers behind each finding. Lengths are on cloth, at the width that was asked about. */
export type FindingNumbers = {
  /** Pixels of real detail to a printed inch. */
  readonly blurry: { readonly pxPerInch: number; readonly level: 'fair' | 'soft' | 'blur' };
  /** The backing's colour, its share of the picture, and how many areas of it the edges do not reach. */
  readonly whiteBox: { readonly hex: string; readonly share: number; readonly enclosed: number };
  readonly junk: { readonly count: number };
  readonly vanishes: { readonly cloths: readonly VanishingCloth[] };
  /** Of the ink; how far from solid ink it reaches. */
  readonly haze: { readonly share: number; readonly reachUm: Micrometres };
  readonly thinStrokes: { readonly thinnestUm: Micrometres; readonly leastUm: Micrometres };
  readonly thinGaps: { readonly thinnestUm: Micrometres; readonly leastUm: Micrometres };
  readonly tooLarge: {
    readonly than: 'sheet' | 'platen';
    readonly widthUm: Micrometres;
    readonly heightUm: Micrometres;
  };
  readonly specks: { readonly count: number };
  /** How many times larger the picture is, along a side, than what is to be seen in it. */
  readonly enlarged: { readonly times: number };
  readonly wholeRectangle: Readonly<Record<string, never>>;
  readonly colour: { readonly from: 'inks' | 'otherColours' };
  /** Of the picture. */
  readonly emptyMargin: { readonly share: number };
};

export type FindingOf<Code extends FindingCode> = {
  readonly code: Code;
  readonly severity: Severity;
  /** Where on the upright picture, px; none where it is the matter everywhere. */
  readonly spots: readonly Spot[];
  readonly numbers: FindingNumbers[Code];
  /** Mends that are honest here, the likeliest first. */
  readonly mends: readonly MendName[];
  /** An ink width at which there is nothing to find (for a blur: at which it no longer stops); null where none would do. */
  readonly passesAtWidthUm: Micrometres | null;
};

/** One thing that will go wrong on cloth, or that is good to know. */
export type ArtFinding = { readonly [Code in FindingCode]: FindingOf<Code> }[FindingCode];
