/** How a name is written as far as capitals go; `none` where its letters have no case. */
export type LetterCase = 'upper' | 'lower' | 'title' | 'odd' | 'none';

/** What a name may begin with before a second capital: `McKay`, `MacLeod`, `DeShawn`, `O'Neil`, `D'Arcy`, `LeBron`. */
const BEFORE_SECOND_CAPITAL =
  /^(?:mc|mac|de|di|da|du|la|le|van|von|fitz|ja|jo|ma|mi|ra|sha|ta|ka|o|d|l|al|el|ibn|ap)$/iu;
/** Small words inside a name that are small in names written with capitals, too. */
const PARTICLES =
  /^(?:de|da|do|dos|das|di|del|della|der|den|des|du|la|le|van|von|zu|af|av|bin|bint|ibn|al|el|y|e|i|of|the|ter|ten|te|jr|sr|ii|iii|iv)$/iu;

/** How a name is written. */
export function letterCase(name: string): LetterCase {
  const words = name.split(/[\s\-'’.]+/u).filter((word) => /[\p{Lu}\p{Ll}\p{Lt}]/u.test(word));
  if (words.length === 0) return 'none';
  const letters = words.join('').replace(/[^\p{Lu}\p{Ll}\p{Lt}]/gu, '');
  // One capital is as much a title as shouting: `J`, `J. R.`
  if (words.every((word) => [...word].length === 1)) return /\p{Ll}/u.test(letters) ? 'lower' : 'none';
  if (!/\p{Ll}/u.test(letters)) return 'upper';
  if (!/\p{Lu}/u.test(letters)) return 'lower';
  return words.every((word, at) => isTitleWord(word, at, words.length)) ? 'title' : 'odd';
}

/** The case most names of a list are written in; null where none is. */
export function usualCase(names: readonly string[]): 'upper' | 'lower' | 'title' | null {
  const cases = names.map(letterCase);
  const count = (wanted: LetterCase) => cases.filter((each) => each === wanted).length;
  const [first] = (['title', 'upper', 'lower'] as const)
    .map((each) => ({ each, count: count(each) }))
    .toSorted((a, b) => b.count - a.count);
  return first && first.count > 0 ? first.each : null;
}

/** A name in the case the others are written in. */
export function inCase(name: string, wanted: 'upper' | 'lower' | 'title'): string {
  if (wanted === 'upper') return name.toUpperCase();
  if (wanted === 'lower') return name.toLowerCase();
  return name
    .split(/(\s+)/u)
    .map((word, at) => (at > 0 && PARTICLES.test(word) ? word.toLowerCase() : capitalised(word)))
    .join('');
}

function capitalised(word: string): string {
  return word
    .split(/([-'’.])/u)
    .map((part) => {
      const scottish = /^(mc)(\p{L}.*)$/iu.exec(part);
      if (scottish) return `Mc${firstCapital(scottish[2] ?? '')}`;
      return firstCapital(part);
    })
    .join('');
}

function firstCapital(part: string): string {
  const [first = '', ...rest] = [...part];
  return first.toUpperCase() + rest.join('').toLowerCase();
}

function isTitleWord(word: string, at: number, count: number): boolean {
  const letters = [...word];
  if (at > 0 && (PARTICLES.test(word) || letters.length === 1)) return true;
  // A small word in the middle links the two beside it: `Ngũgĩ wa Thiong’o`.
  if (at > 0 && at < count - 1 && letters.length <= 3 && /^\p{Ll}+$/u.test(word)) return true;
  // Initials run together and numerals of a family: `JR Ewing`, `Henry IV`.
  if (/^(?:\p{Lu}{2}|[IVX]{2,4})$/u.test(word)) return true;
  const [first = '', ...rest] = letters;
  if (!/[\p{Lu}\p{Lt}]/u.test(first)) return !/\p{Ll}/u.test(first) || PARTICLES.test(word);
  const secondAt = rest.findIndex((letter) => /\p{Lu}/u.test(letter));
  if (secondAt < 0) return true;
  const later = rest.slice(secondAt + 1).join('');
  return BEFORE_SECOND_CAPITAL.test([first, ...rest.slice(0, secondAt)].join('')) && /^\P{Lu}{2,}$/u.test(later);
}
