import bidiFactory, { type BidiCharTypeName } from 'bidi-js';

const bidi = bidiFactory();

/** What direction a line runs in as a whole; null where its first letter with a direction decides (UAX #9, P2 and P3). */
export type BaseDirection = 'leftToRight' | 'rightToLeft' | null;

/**
 * One character of each kind that characters beyond the Basic Multilingual Plane have: bidi-js looks at UTF-16 units, and
 * half a character would count as a Latin letter.
 */
const STAND_INS: Partial<Record<BidiCharTypeName, string>> = {
  L: 'a',
  R: '\u05d0',
  AL: '\u0627',
  EN: '0',
  AN: '\u0660',
  ET: '#',
  ON: '!',
  NSM: '\u0300',
  BN: '\u200b',
};

/**
 * The embedding level of every UTF-16 unit of a line (UAX #9): odd ones run right to left. Spaces at the end stand at the
 * level of the line. What would end a paragraph in the middle counts as a space: it is one line whatever it holds.
 */
export function bidiLevels(text: string, base: BaseDirection = null): Uint8Array {
  const characters = Array.from(text);
  const oneUnitEach = characters.map((each, index) => standIn(each, index === characters.length - 1)).join('');
  const { levels, paragraphs } = bidi.getEmbeddingLevels(oneUnitEach, direction(base));
  const level = paragraphs[0]?.level ?? 0;
  for (let index = characters.length - 1; index >= 0 && isTrailing(oneUnitEach.charAt(index)); index -= 1) {
    levels[index] = level;
  }
  const byUnit = characters.flatMap(({ length }, index) => Array.from({ length }, () => levels[index] ?? level));
  return Uint8Array.from(byUnit);
}

/** Stretches of a line from left to right as they are seen, each with its level (UAX #9, L2). */
export function inVisualOrder<Stretch extends { readonly level: number }>(stretches: readonly Stretch[]): Stretch[] {
  const ordered = [...stretches];
  const highest = Math.max(0, ...ordered.map(({ level }) => level));
  for (let level = highest; level > 0; level -= 1) {
    let from = 0;
    while (from < ordered.length) {
      let to = from;
      while (to < ordered.length && (ordered[to]?.level ?? 0) >= level) to += 1;
      ordered.splice(from, to - from, ...ordered.slice(from, to).reverse());
      from = to + 1;
    }
  }
  return ordered;
}

function standIn(character: string, isLast: boolean): string {
  const kind = bidi.getBidiCharTypeName(character);
  if (kind === 'B' && !isLast) return ' ';
  if (character.length === 1) return character;
  const stands = STAND_INS[kind];
  if (!stands) throw new Error(`No stand-in for a character of the kind ${kind}: ${character}`);
  return stands;
}

function direction(base: BaseDirection): 'ltr' | 'rtl' | 'auto' {
  if (base === null) return 'auto';
  return base === 'leftToRight' ? 'ltr' : 'rtl';
}

/** What takes the level of the line at its end (UAX #9, L1): spaces, separators and what only steers direction. */
const TRAILING_KINDS: ReadonlySet<BidiCharTypeName> = new Set([
  ...(['S', 'WS', 'B', 'LRI', 'RLI', 'FSI', 'PDI'] as const),
  ...(['BN', 'RLE', 'LRE', 'RLO', 'LRO', 'PDF'] as const),
]);

function isTrailing(character: string): boolean {
  return TRAILING_KINDS.has(bidi.getBidiCharTypeName(character));
}
