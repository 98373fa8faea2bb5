import type { Lettering } from '../lettering/lettering';
import type { SetLettering } from '../lettering/set-lettering';
import { THINNEST_STROKE_MM, thinnestStrokeMm } from '../lettering/thinnest-stroke';
import type { BorrowedText } from '../lettering/type-engine';
import { type Micrometres, mmFromUm, umFromMm } from '../measure/length';
import type { People } from '../people/person';
import type { Print, SizeGroup } from './document';
import { letteringOf } from './print-content';
import type { TypeCase } from './type-case';

/** Somebody of the list (null: fixed words, or samples), and what their words come to. */
type OfPerson<What> = { readonly personId: string | null } & What;

/**
 * What there is to say of lettering in one size group, for everybody of the list (for the samples while it is empty).
 * `missing` stops it: what no font has cannot be printed.
 */
export type LetteringFinding =
  | { readonly code: 'missing'; readonly characters: readonly string[]; readonly personIds: readonly (string | null)[] }
  | {
      readonly code: 'borrowed';
      readonly borrowed: readonly BorrowedText[];
      readonly personIds: readonly (string | null)[];
    }
  /** Set lower than asked, squeezed to the floor: the lowest first. */
  | { readonly code: 'lowered'; readonly people: readonly OfPerson<{ readonly capHeightUm: Micrometres }>[] }
  /** Squeezed and no lower: the narrowest first. */
  | { readonly code: 'squeezed'; readonly people: readonly OfPerson<{ readonly percent: number }>[] }
  /** The thinnest stroke at this height, and the height at which it is thick enough. */
  | {
      readonly code: 'tooThin';
      readonly um: Micrometres;
      readonly neededUm: Micrometres;
      readonly passesAtUm: Micrometres;
    }
  | { readonly code: 'outlineTooThin'; readonly um: Micrometres; readonly neededUm: Micrometres }
  /** Nobody of the list has anything in these columns. */
  | { readonly code: 'nothingToSay' };

/** Everything there is to say of one size group of a lettering print; empty for a picture. */
export function letteringFindings(
  print: Pick<Print, 'content'>,
  group: Pick<SizeGroup, 'widthUm' | 'capHeightUm'>,
  people: Pick<People, 'lines'>,
  type: TypeCase,
): LetteringFinding[] {
  const lettering = letteringOf(print);
  if (!lettering) return [];
  const longest = type.longest(lettering, group);
  const everybody = type.isPersonal(lettering) && people.lines.length > 0;
  // Where the longest need no squeezing nobody does: only letters are looked at one by one.
  const isTight = longest.outcome !== 'fits' || lettering.archPercent !== 0;
  const looks = everybody
    ? people.lines.map(({ personId }) => ({
        personId,
        look: isTight ? type.of(personId)(lettering, group) : null,
        text: type.textOf(lettering, personId),
      }))
    : [{ personId: null, look: longest, text: type.textOf(lettering, null) }];
  const texts = looks.map(({ personId, text }) => ({ personId, ...text }));
  const missing = texts.filter((each) => each.missing.length > 0);
  const borrowed = texts.filter((each) => each.borrowed.length > 0);
  const set = looks.flatMap(({ personId, look }) => (look && look.path.length > 0 ? [{ personId, look }] : []));
  const lowered = set.filter(({ look }) => look.outcome === 'lowered');
  const squeezed = set.filter(({ look }) => look.outcome === 'squeezed');
  const found: LetteringFinding[] = [];
  if (missing.length > 0) {
    const characters = [...new Set(missing.flatMap((each) => each.missing))];
    found.push({ code: 'missing', characters, personIds: missing.map(({ personId }) => personId) });
  }
  if (everybody && texts.every(({ isEmpty }) => isEmpty)) found.push({ code: 'nothingToSay' });
  if (lowered.length > 0) {
    const all = lowered.map(({ personId, look }) => ({ personId, capHeightUm: look.capHeightUm }));
    found.push({ code: 'lowered', people: all.sort((a, b) => a.capHeightUm - b.capHeightUm) });
  }
  if (squeezed.length > 0) {
    const all = squeezed.map(({ personId, look }) => ({ personId, percent: look.squeezedPercent }));
    found.push({ code: 'squeezed', people: all.sort((a, b) => a.percent - b.percent) });
  }
  if (borrowed.length > 0) {
    const each = new Map(
      borrowed.flatMap((text) => text.borrowed.map((one) => [`${one.text} ${one.font.sha256}`, one])),
    );
    found.push({ code: 'borrowed', borrowed: [...each.values()], personIds: borrowed.map(({ personId }) => personId) });
  }
  return [...found, ...thinFindings(lettering, longest, type)];
}

/** Whether a finding stops a revision: the words cannot be printed as they are. */
export function stopsLettering({ code }: LetteringFinding): boolean {
  return code === 'missing';
}

function thinFindings(
  { font, outline }: Lettering,
  { capHeightUm, squeezedPercent, path }: SetLettering,
  type: TypeCase,
): LetteringFinding[] {
  const neededUm = umFromMm(THINNEST_STROKE_MM);
  const found: LetteringFinding[] = [];
  const thinnest = type.thinnestOf(font);
  const thinnestMm = thinnestStrokeMm(thinnest, capHeightUm, squeezedPercent);
  if (thinnestMm !== null && path.length > 0 && thinnestMm < THINNEST_STROKE_MM) {
    const passesAtUm = umFromMm((mmFromUm(capHeightUm) * THINNEST_STROKE_MM) / thinnestMm);
    found.push({ code: 'tooThin', um: umFromMm(thinnestMm), neededUm, passesAtUm });
  }
  if (outline && outline.widthUm < neededUm) found.push({ code: 'outlineTooThin', um: outline.widthUm, neededUm });
  return found;
}
