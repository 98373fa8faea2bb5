import { FINDING_CODES, type FindingCode } from '@/lib/domain/art/findings/art-finding';
import type { TruthPicture } from './truth-picture';

/** How often each finding was right, wrong, or missing. */
export type Tally = Record<FindingCode, { found: number; wrong: number; missed: number }>;

export function emptyTally(): Tally {
  return Object.fromEntries(FINDING_CODES.map((code) => [code, { found: 0, wrong: 0, missed: 0 }])) as Tally;
}

/** Counts what was found of one picture; answers with what was wrong or missed. */
export function count(tally: Tally, { must, either = [] }: TruthPicture, found: ReadonlySet<FindingCode>): string[] {
  return FINDING_CODES.flatMap((code) => {
    const counted = tally[code];
    if (must.includes(code)) {
      if (found.has(code)) {
        counted.found += 1;
        return [];
      }
      counted.missed += 1;
      return [`missed ${code}`];
    }
    if (either.includes(code) || !found.has(code)) return [];
    counted.wrong += 1;
    return [`wrong ${code}`];
  });
}

export type Shares = { readonly precision: Record<string, number>; readonly recall: Record<string, number> };

/** Of what was found, how much was there; of what was there, how much was found. Only findings that were drawn count. */
export function sharesOf(tally: Tally): Shares {
  const drawn = FINDING_CODES.filter((code) => tally[code].found + tally[code].missed > 0);
  const of = (share: (counted: Tally[FindingCode]) => number) =>
    Object.fromEntries(drawn.map((code) => [code, share(tally[code])]));
  return {
    precision: of(({ found, wrong }) => (found + wrong === 0 ? 0 : found / (found + wrong))),
    recall: of(({ found, missed }) => found / (found + missed)),
  };
}
