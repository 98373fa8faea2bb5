import { folded } from './clean-field';
import { inCase, letterCase, usualCase } from './letter-case';
import type { ListLine } from './list';
import type { Finding } from './list-check';
import { invisibleCharacters, lookAlikeCharacters, withoutInvisible, withoutLookAlikes } from './look-alikes';
import type { Column } from './person';

/** Longer than any name that was ever pressed on a shirt (common practice, no source). */
export const LONGEST_USUAL_FIELD = 60;
/** Years a garment may name: so long before and after this one (common practice, no source). */
const YEARS_BEFORE = 120;
const YEARS_AFTER = 12;

/** What is found in one cell of words by itself. `usual` is the case the names of its column are written in. */
export function fieldFindings(
  text: string,
  { kind }: Pick<Column, 'kind'>,
  { usual, thisYear }: { usual: 'upper' | 'lower' | 'title' | null; thisYear: number },
): Finding[] {
  if (text === '') return [];
  const lookAlikes = lookAlikeFindings(text, kind === 'name');
  return [
    ...spaceFindings(text),
    ...invisibleFindings(text),
    ...(kind === 'number' ? numberFindings(text) : lookAlikes),
    // Capitals of a name that is not what it seems are looked at once it is.
    ...(kind === 'name' && lookAlikes.length === 0 ? nameFindings(text, usual) : []),
    ...(kind === 'year' ? yearFindings(text, thisYear) : []),
    ...([...text].length > LONGEST_USUAL_FIELD ? [{ code: 'veryLong' as const }] : []),
  ];
}

/** The case most names of a column are written in. */
export function usualCaseOf(lines: readonly ListLine[], columnId: string): 'upper' | 'lower' | 'title' | null {
  return usualCase(lines.map(({ fields }) => fields[columnId] ?? ''));
}

function spaceFindings(text: string): Finding[] {
  const better = text.replace(/\s+/gu, ' ').trim();
  return better === text ? [] : [{ code: 'straySpaces', better }];
}

function invisibleFindings(text: string): Finding[] {
  const characters = invisibleCharacters(text);
  return characters.length === 0 ? [] : [{ code: 'invisible', characters, better: withoutInvisible(text) }];
}

function lookAlikeFindings(text: string, digitsToo: boolean): Finding[] {
  if (digitsToo && isNumber(text)) return [];
  const characters = lookAlikeCharacters(text, { digitsToo });
  if (characters.length === 0) return [];
  return [{ code: 'lookAlike', characters, better: withoutLookAlikes(text, { digitsToo }) }];
}

function nameFindings(text: string, usual: 'upper' | 'lower' | 'title' | null): Finding[] {
  if (isNumber(text)) return [{ code: 'numberForName' }];
  const written = letterCase(text);
  if (written === 'none') return [];
  const wanted = written === 'odd' ? (usual ?? 'title') : usual;
  if (wanted === null || written === wanted) return [];
  const better = inCase(text, wanted);
  return better === text ? [] : [{ code: 'mixedCase', better }];
}

function numberFindings(text: string): Finding[] {
  const digits = folded(text);
  if (/^[0-9]+$/u.test(text.trim())) return [];
  if (/^[0-9]+$/u.test(digits)) {
    const characters = lookAlikeCharacters(text, { digitsToo: false });
    if (characters.length > 0) return [{ code: 'lookAlike', characters, better: digits }];
  }
  const better = [...digits]
    .map((character) => DIGIT_FOR_LETTER[character] ?? character)
    .join('')
    .replace(/^#\s*/u, '');
  return [{ code: 'lettersInNumber', better: better !== text && /^[0-9]+$/u.test(better) ? better : null }];
}

/** Letters that are typed for digits. Source: the pairs of Unicode Technical Standard 39, confusables.txt. */
const DIGIT_FOR_LETTER: Readonly<Record<string, string>> = { o: '0', l: '1', i: '1', '|': '1' };

function yearFindings(text: string, thisYear: number): Finding[] {
  const years = [...text.matchAll(/(?<!\d)(\d{4,})(?!\d)/gu)].map(([, digits]) => Number(digits));
  const unlikely = years.find((year) => year < thisYear - YEARS_BEFORE || year > thisYear + YEARS_AFTER);
  if (unlikely !== undefined) return [{ code: 'yearUnlikely', year: unlikely }];
  const bare = /^\s*(\d{1,3})\s*$/u.exec(text)?.[1];
  return bare !== undefined && bare.length !== 2 ? [{ code: 'yearUnlikely', year: Number(bare) }] : [];
}

function isNumber(text: string): boolean {
  return /^[#\s\p{N}.,-]+$/u.test(text) && /\p{N}/u.test(text);
}
