import { rectifyConfusion } from 'unicode-confusables';
import type { OddCharacter } from './list-check';

/** Scripts whose letters are told apart; the rest count as one. Order is that of how often a list is written in them. */
const SCRIPTS = {
  Latin: /\p{Script=Latin}/u,
  Cyrillic: /\p{Script=Cyrillic}/u,
  Greek: /\p{Script=Greek}/u,
  Armenian: /\p{Script=Armenian}/u,
  Cherokee: /\p{Script=Cherokee}/u,
  Hebrew: /\p{Script=Hebrew}/u,
  Arabic: /\p{Script=Arabic}/u,
} as const;

/** Characters nothing is seen of: formats and fillers, without the selectors that choose how an emoji looks. */
const INVISIBLE = /\p{Cf}|\u034f|\u115f|\u1160|\u17b4|\u17b5|[\u3164\uffa0\u2800]/u;
/** Joiners are part of the writing between letters of these scripts (Unicode Standard, 12.1 and 9.2). */
const JOINED =
  /[\p{Script=Arabic}\p{Script=Devanagari}\p{Script=Bengali}\p{Script=Malayalam}\p{Script=Sinhala}\p{Script=Kannada}\p{Script=Telugu}]/u;
const JOINERS = '\u200c\u200d';
const PICTURE = /\p{Extended_Pictographic}/u;
/** Accents typed by themselves where an apostrophe was meant. */
const ACCENTS_FOR_APOSTROPHES: Readonly<Record<string, string>> = { '`': '’', '´': '’' };

/**
 * What a text looks like: its skeleton (Unicode Technical Standard 39, section 4). Two texts with one skeleton can be
 * mistaken for each other.
 */
export function skeleton(text: string): string {
  return rectifyConfusion(text.normalize('NFD')).normalize('NFD');
}

/** `U+0430` */
export function codePointName(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}

/** The characters of a text that cannot be seen, joiners that belong to the writing and to emoji left out. */
export function invisibleCharacters(text: string): OddCharacter[] {
  const characters = [...text];
  return characters
    .filter((character, at) => INVISIBLE.test(character) && !isJoining(characters, at))
    .map((character) => odd(character, ''));
}

/** A text without what cannot be seen. */
export function withoutInvisible(text: string): string {
  const characters = [...text];
  return characters.filter((character, at) => !INVISIBLE.test(character) || isJoining(characters, at)).join('');
}

/**
 * The characters of a text that look like others: letters of a second script inside a word, wide and mathematical forms,
 * digits among letters, accents for apostrophes. Source of what looks like what: Unicode Technical Standard 39,
 * confusables.txt.
 */
export function lookAlikeCharacters(text: string, options: { digitsToo: boolean }): OddCharacter[] {
  return wordsOf(text).flatMap((word) => oddOfWord(word, options.digitsToo));
}

/** A text with each look-alike put in place of what it is taken for; null where one could be taken for several things. */
export function withoutLookAlikes(text: string, options: { digitsToo: boolean }): string | null {
  const words = wordsOf(text).map((word) => {
    const odds = oddOfWord(word, options.digitsToo);
    if (odds.some(({ character, like }) => like === UNLIKE || /[1|]/u.test(character))) return null;
    const likes = new Map(odds.map(({ character, like }) => [character, like]));
    return [...word].map((character) => likes.get(character) ?? character).join('');
  });
  return words.includes(null) ? null : words.join('').normalize('NFC');
}

/** Stands for a letter of another script that looks like none of the word's own. */
const UNLIKE = '?';

function wordsOf(text: string): string[] {
  return text.split(/(\s+)/u);
}

function oddOfWord(word: string, digitsToo: boolean): OddCharacter[] {
  const home = homeScript(word);
  return [...word].flatMap((character) => {
    const like = likeOf(character, word, home, digitsToo);
    return like === null || like === character ? [] : [odd(character, like)];
  });
}

function likeOf(character: string, word: string, home: RegExp | null, digitsToo: boolean): string | null {
  if (ACCENTS_FOR_APOSTROPHES[character] && /\p{L}/u.test(word)) return ACCENTS_FOR_APOSTROPHES[character];
  // Ordinals are written so in names: `Mª`.
  if (/[\p{L}\p{N}]/u.test(character) && !'ªº'.includes(character)) {
    const plain = character.normalize('NFKC');
    if (plain !== character && /^[\p{Script=Latin}\p{N}]+$/u.test(plain)) return plain;
  }
  if (home === null) return null;
  if (/[01|]/u.test(character)) return digitsToo ? zeroOrOne(character, word) : null;
  const script = scriptOf(character);
  if (script === null || script === home) return null;
  return inHomeScript(character, home);
}

/** A digit among letters is taken for the letter of its neighbours' case. */
function zeroOrOne(digit: string, word: string): string {
  const isSmall = /\p{Ll}/u.test(word) && !word.startsWith(digit);
  if (digit === '0') return isSmall ? 'o' : 'O';
  return isSmall ? 'l' : 'I';
}

/** The letter of the word's own script that the character is confused with; the character where there is none. */
function inHomeScript(character: string, home: RegExp): string {
  const like = skeleton(character).normalize('NFC');
  if (home === SCRIPTS.Latin) return scriptOf([...like][0] ?? '') === home ? like : UNLIKE;
  const twin = TWINS.find((letter) => home.test(letter) && skeleton(letter) === skeleton(character));
  return twin ?? UNLIKE;
}

/** Letters other scripts have in common with Latin, as far as people's names are mistyped with them. */
const TWINS = [...'АВЕКМНОРСТХаеорсухіѕјΑΒΕΖΗΙΚΜΝΟΡΤΥΧονυ'];

/** The script most letters of a word are of, the earlier of two; null where no letter is. */
function homeScript(word: string): RegExp | null {
  const counts = Object.values(SCRIPTS).map((script) => ({
    script,
    count: [...word].filter((character) => script.test(character)).length,
  }));
  const most = counts.reduce((best, each) => (each.count > best.count ? each : best), {
    script: SCRIPTS.Latin,
    count: 0,
  } as {
    script: RegExp;
    count: number;
  });
  return most.count === 0 ? null : most.script;
}

function scriptOf(character: string): RegExp | null {
  return Object.values(SCRIPTS).find((script) => script.test(character)) ?? null;
}

function isJoining(characters: readonly string[], at: number): boolean {
  const character = characters[at] ?? '';
  const around = [characters[at - 1] ?? '', characters[at + 1] ?? ''];
  if (character === '\ufe0f') return true;
  if (!JOINERS.includes(character)) return false;
  return around.every((each) => JOINED.test(each) || /\p{M}/u.test(each)) || around.some((each) => PICTURE.test(each));
}

function odd(character: string, like: string): OddCharacter {
  return { character, codePoint: codePointName(character), like };
}
