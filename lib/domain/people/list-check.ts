import type { SizeOnOffer } from './list';

/** A character of a cell that is not what it seems. `like` is what a reader takes it for; empty where nothing shows. */
export type OddCharacter = { readonly character: string; readonly codePoint: string; readonly like: string };

/** How one size was ordered, and how many of it the list and its spares come to. */
export type CountDifference = {
  readonly size: SizeOnOffer;
  readonly ordered: number;
  readonly listed: number;
};

/** What was found, with what its sentence needs. `better` is what the cell would say mended; null where nobody can tell. */
export type Finding =
  | { readonly code: 'sizeMissing' }
  | { readonly code: 'sizeUnknown' | 'sizeNotOffered'; readonly typed: string }
  | { readonly code: 'sizeAmbiguous'; readonly typed: string; readonly choices: readonly SizeOnOffer[] }
  | { readonly code: 'sizeGone' }
  | { readonly code: 'numberTwice' | 'nameTwice' | 'lookAlikeName'; readonly others: readonly string[] }
  | { readonly code: 'straySpaces' | 'mixedCase'; readonly better: string }
  | {
      readonly code: 'lookAlike' | 'invisible';
      readonly characters: readonly OddCharacter[];
      readonly better: string | null;
    }
  | { readonly code: 'lettersInNumber'; readonly better: string | null }
  | { readonly code: 'numberForName' | 'veryLong' | 'fieldMissing' }
  | { readonly code: 'yearUnlikely'; readonly year: number }
  | { readonly code: 'countsDiffer'; readonly garmentId: string; readonly differences: readonly CountDifference[] };

export type FindingCode = Finding['code'];

/** Findings that leave it open what is made; nothing is sent before they are settled. */
const STOPPING: readonly FindingCode[] = ['sizeMissing', 'sizeUnknown', 'sizeNotOffered', 'sizeAmbiguous', 'sizeGone'];

/** A finding in its place. */
export type ListCheck = {
  /** Null for what is said of the list as a whole. */
  readonly personId: string | null;
  /** A column's id, or `sizePlace` of a garment. */
  readonly place: string;
  readonly finding: Finding;
  /** What it was said of: the same finding about something else is a new one. */
  readonly about: string;
  /** Why it is meant so; null while it is open. */
  readonly meant: string | null;
};

/** Whether sending waits for a finding. */
export function stopsSending({ meant, finding }: Pick<ListCheck, 'meant' | 'finding'>): boolean {
  return meant === null && STOPPING.includes(finding.code);
}

/** Findings nobody has settled. */
export function openChecks(checks: readonly ListCheck[]): ListCheck[] {
  return checks.filter(({ meant }) => meant === null);
}

/** What of the list is open: how many findings, how many of them stop sending, and lines that have to be confirmed yet. */
export type OpenInList = { readonly findings: number; readonly stops: number; readonly unconfirmed: number };

export const NOTHING_OPEN: OpenInList = { findings: 0, stops: 0, unconfirmed: 0 };
