import { type Micrometres, roundUm } from '../../measure/length';
import type { ArtFacts, Spot } from '../art-facts';
import type { ArtNote } from '../art-notes';
import type { FindingOf } from './art-finding';

/** Below these there is nothing that would be seen on a shirt (common practice, no source). */
const LEAST = {
  /** Half-clear ink, of all ink, and how far it reaches from solid ink, px. */
  hazeShare: 0.005,
  hazeReachPx: 3,
  /** Of the picture along a side. */
  margin: 0.1,
} as const;

/** A picture whose detail is this share of its pixels or more counts as one that was never enlarged. */
const WHOLE_DETAIL_SHARE = 0.8;

/** A flat backing that would be pressed as a box. */
export function whiteBox({ backing }: ArtFacts): FindingOf<'whiteBox'> | null {
  if (!backing) return null;
  return {
    code: 'whiteBox',
    severity: 'warns',
    spots: [],
    numbers: { hex: backing.hex, share: backing.share, enclosed: backing.enclosed.length },
    mends: ['knockOut'],
    passesAtWidthUm: null,
  };
}

/** A picture without a clear pixel that no flat backing explains: a photograph, or art that fills its rectangle. */
export function wholeRectangle(facts: ArtFacts, notes: readonly ArtNote[]): FindingOf<'wholeRectangle'> | null {
  if (facts.backing || !notes.includes('noTransparency')) return null;
  return {
    code: 'wholeRectangle',
    severity: 'notes',
    spots: [],
    numbers: {},
    mends: ['crop'],
    passesAtWidthUm: null,
  };
}

/** Bars of a screenshot, the edge of a card. */
export function junk({ junk: spots }: ArtFacts): FindingOf<'junk'> | null {
  if (spots.length === 0) return null;
  return {
    code: 'junk',
    severity: 'warns',
    spots,
    numbers: { count: spots.length },
    mends: ['crop', 'erase'],
    passesAtWidthUm: null,
  };
}

/** A glow, a shadow, a fade into nothing. */
export function haze({ haze: found, inkBox }: ArtFacts, widthUm: Micrometres): FindingOf<'haze'> | null {
  const { share, reachPx, spots } = found;
  if (share < LEAST.hazeShare || reachPx < LEAST.hazeReachPx) return null;
  return {
    code: 'haze',
    severity: 'warns',
    spots,
    numbers: { share, reachUm: roundUm((reachPx * widthUm) / inkBox.width) },
    mends: ['hardenEdge', 'dots'],
    passesAtWidthUm: null,
  };
}

/** Stray dots beside the art. */
export function specks({ specks: { count, spots } }: ArtFacts): FindingOf<'specks'> | null {
  if (count === 0) return null;
  return {
    code: 'specks',
    severity: 'warns',
    spots,
    numbers: { count },
    mends: ['clearSpecks'],
    passesAtWidthUm: null,
  };
}

/** More pixels than there is to see. */
export function enlarged({ detailShare }: ArtFacts): FindingOf<'enlarged'> | null {
  if (detailShare >= WHOLE_DETAIL_SHARE) return null;
  return {
    code: 'enlarged',
    severity: 'notes',
    spots: [],
    numbers: { times: 1 / Math.max(detailShare, 0.01) },
    mends: [],
    passesAtWidthUm: null,
  };
}

/** Colours that were turned into sRGB when the picture came in. */
export function colour(notes: readonly ArtNote[]): FindingOf<'colour'> | null {
  const from = notes.includes('convertedFromCmyk') ? 'inks' : notes.includes('convertedToSrgb') ? 'otherColours' : null;
  return from && { code: 'colour', severity: 'notes', spots: [], numbers: { from }, mends: [], passesAtWidthUm: null };
}

/** Clear room round the ink. Sizes are those of the ink, so it does no harm but for who opens the file elsewhere. */
export function emptyMargin({ inkBox, widthPx, heightPx }: ArtFacts): FindingOf<'emptyMargin'> | null {
  const isNarrow =
    widthPx - inkBox.width < widthPx * LEAST.margin && heightPx - inkBox.height < heightPx * LEAST.margin;
  if (isNarrow) return null;
  return {
    code: 'emptyMargin',
    severity: 'notes',
    spots: [inkBox] satisfies Spot[],
    numbers: { share: 1 - (inkBox.width * inkBox.height) / (widthPx * heightPx) },
    mends: ['trim'],
    passesAtWidthUm: null,
  };
}
