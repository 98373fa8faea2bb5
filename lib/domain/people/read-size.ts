import type { AgeBand } from '../garment/kinds';
import { folded } from './clean-field';
import type { SizeOnOffer } from './list';

/** What was read from a size as somebody wrote it. `choices` are the sizes it could mean. */
export type ReadSize =
  | { readonly ok: true; readonly size: SizeOnOffer }
  | { readonly ok: false; readonly reason: 'ambiguous'; readonly choices: readonly SizeOnOffer[] }
  | { readonly ok: false; readonly reason: 'notOffered' | 'unknown' };

/** What the trade writes for whom a size is cut (common practice, no source). `women` names no band of its own: it is asked. */
const BAND_WORDS: Readonly<Record<string, AgeBand | 'women'>> = {
  y: 'youth',
  yt: 'youth',
  yth: 'youth',
  youth: 'youth',
  youths: 'youth',
  kid: 'youth',
  kids: 'youth',
  "kid's": 'youth',
  child: 'youth',
  childs: 'youth',
  "child's": 'youth',
  children: 'youth',
  childrens: 'youth',
  "children's": 'youth',
  junior: 'youth',
  jr: 'youth',
  boy: 'youth',
  boys: 'youth',
  girl: 'youth',
  girls: 'youth',
  a: 'adult',
  ad: 'adult',
  adult: 'adult',
  adults: 'adult',
  man: 'adult',
  men: 'adult',
  mens: 'adult',
  "men's": 'adult',
  unisex: 'adult',
  women: 'women',
  womens: 'women',
  "women's": 'women',
  lady: 'women',
  ladies: 'women',
  t: 'toddler',
  tod: 'toddler',
  toddler: 'toddler',
  toddlers: 'toddler',
  infant: 'infant',
  infants: 'infant',
  baby: 'infant',
};

/** What the trade writes for the letters of a size (common practice, no source). */
const LETTER_WORDS: Readonly<Record<string, string>> = {
  xxs: '2xs',
  xsm: 'xs',
  xsmall: 'xs',
  extrasmall: 'xs',
  sm: 's',
  sml: 's',
  small: 's',
  md: 'm',
  med: 'm',
  medium: 'm',
  lg: 'l',
  lrg: 'l',
  large: 'l',
  xlg: 'xl',
  xlarge: 'xl',
  extralarge: 'xl',
  '1x': 'xl',
  '1xl': 'xl',
  doublexl: '2xl',
  triplexl: '3xl',
  newborn: 'nb',
  os: 'onesize',
  onesize: 'onesize',
};

/** True for a word that says for whom a size is cut: `youth`, `Y`, `adult`. */
export function isBandWord(word: string): boolean {
  return Object.hasOwn(BAND_WORDS, plainWords(word)) && plainWords(word).length > 1;
}

/**
 * Reads a size as people write it (`youth M`, `YM`, `2X`, `XXL`, `adult large`) against those a garment is offered in. A
 * bare `M` is `ambiguous` where it is offered for youths and for adults: nobody can tell which was meant.
 */
export function readSize(text: string, offered: readonly SizeOnOffer[]): ReadSize {
  const wanted = plainWords(text);
  if (wanted === '') return { ok: false, reason: 'unknown' };
  const known = writingsOf(offered);
  const said = known.filter(({ words }) => words === wanted).map(({ size }) => size);
  // An adult size is said by its letters alone, which is just what somebody writes who forgets to say `youth`.
  const bare = known.filter(({ letters }) => letters === lettersOf(wanted)).map(({ size }) => size);
  if (said.length === 1 && bare.length <= 1) return found(said);
  if (bare.length > 0) return found(bare);
  if (said.length > 0) return found(said);
  const read = bandAndLetters(wanted);
  if (read === null) return { ok: false, reason: isLetters(lettersOf(wanted)) ? 'notOffered' : 'unknown' };
  const { band, letters } = read;
  const inLetters = known.filter(({ bandless }) => bandless === letters).map(({ size }) => size);
  if (band === 'women') {
    const adults = inLetters.filter(({ ageBand }) => ageBand === 'adult');
    return adults.length > 0
      ? { ok: false, reason: 'ambiguous', choices: adults }
      : { ok: false, reason: 'notOffered' };
  }
  const inBand = inLetters.filter(({ ageBand }) => band === null || ageBand === band);
  return inBand.length > 0 ? found(inBand) : { ok: false, reason: isLetters(letters) ? 'notOffered' : 'unknown' };
}

type Writing = {
  readonly size: SizeOnOffer;
  readonly words: string;
  readonly letters: string;
  readonly bandless: string;
};

/** A long message is held against the same sizes word for word: how they are written is worked out once. */
const writings = new WeakMap<readonly SizeOnOffer[], readonly Writing[]>();

function writingsOf(offered: readonly SizeOnOffer[]): readonly Writing[] {
  const known = writings.get(offered);
  if (known) return known;
  const made = offered.map((size) => ({
    size,
    words: plainWords(size.words),
    letters: lettersOf(plainWords(size.label)),
    bandless: lettersWithoutBand(size.label, size.ageBand),
  }));
  writings.set(offered, made);
  return made;
}

function found(sizes: readonly SizeOnOffer[]): ReadSize {
  const [size] = sizes;
  return size && sizes.length === 1 ? { ok: true, size } : { ok: false, reason: 'ambiguous', choices: sizes };
}

/** Small letters, single spaces, without the marks people put around a size. */
function plainWords(text: string): string {
  return folded(text)
    .replace(/[’`]/gu, "'")
    .replace(/^size\s*:?\s*/u, '')
    .replace(/[().,:;"#]/gu, ' ')
    .replace(/\s*([-/–])\s*/gu, '$1')
    .replace(/\s+/gu, ' ')
    .trim();
}

/** The letters of a size in the one form they are compared in: `x-large`, `XL` and `extra large` are `xl`. */
function lettersOf(plain: string): string {
  const joined = /^\d+[-/–]\d+$/u.test(plain) ? plain.replace(/[/–]/gu, '-') : plain.replace(/[-/–\s]/gu, '');
  const written = LETTER_WORDS[joined] ?? joined;
  const many = /^(x{2,6})(?:l|lg|large)?$/u.exec(written)?.[1];
  if (many) return `${many.length}xl`;
  const counted = /^([2-9])x(?:l|lg|large)?$/u.exec(written)?.[1];
  if (counted) return `${counted}xl`;
  const months = /^(\d{1,2})(?:m|mo|mos|mth|mths|month|months)$/u.exec(written)?.[1];
  return months ? `${months}m` : written;
}

function isLetters(letters: string): boolean {
  return /^(?:\d?xs|[sml]|\d?xl|\d+t|\d+m|nb|onesize)$/u.test(letters);
}

/** The letters a label has when the band it may begin with is left away: those of `YM` and `Youth M` are `m`. */
function lettersWithoutBand(label: string, ageBand: AgeBand): string {
  const plain = plainWords(label);
  const read = bandAndLetters(plain);
  return read && (read.band === null || read.band === ageBand) ? read.letters : lettersOf(plain);
}

function bandAndLetters(plain: string): { band: AgeBand | 'women' | null; letters: string } | null {
  const words = plain.split(/[\s-]/u);
  const bandAt = words.findIndex((word) => Object.hasOwn(BAND_WORDS, word));
  if (bandAt >= 0 && words.length > 1) {
    const rest = words.filter((_, at) => at !== bandAt).join(' ');
    return { band: BAND_WORDS[words[bandAt] ?? ''] ?? null, letters: lettersOf(rest) };
  }
  const attached = /^(y|a)[-/]?(\S+)$/u.exec(plain);
  const letters = lettersOf(attached?.[2] ?? '');
  if (attached && isLetters(letters)) return { band: attached[1] === 'y' ? 'youth' : 'adult', letters };
  return isLetters(lettersOf(plain)) ? { band: null, letters: lettersOf(plain) } : null;
}
