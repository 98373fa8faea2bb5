import type { WrittenUnit } from './chart-reading';

const UNIT_WORDS: Readonly<Record<string, WrittenUnit>> = {
  in: 'in',
  ins: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '”': 'in',
  '″': 'in',
  cm: 'cm',
  cms: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
};

const WORDS = Object.keys(UNIT_WORDS)
  .filter((word) => /^\w/.test(word))
  .join('|');
const IN_BRACKETS = new RegExp(`[([{]\\s*(?:in\\s+)?(${WORDS}|["”″])\\s*\\.?\\s*[)\\]}]`, 'i');
/** `, cm`, `in inches`, `/ mm` at the end. The word `in` alone at the end of a sentence is one, too: `Chest in`. */
const AT_THE_END = new RegExp(`(?:[\\s,:;/–—-]|\\bin\\s)(${WORDS}|["”″])\\.?$`, 'i');
/** Said in passing: `All sizes in inches`. Here `in` is a preposition. */
const IN_A_SENTENCE = new RegExp(`\\b(${WORDS.replace(/\bin\|ins\|/, '')})\\b`, 'gi');
const ON_A_NUMBER = new RegExp(`[\\d¼½¾⅛⅜⅝⅞⅓⅔]\\s*(${WORDS}|["”″]|''|’’)\\.?$`, 'i');
/** A length said in passing is no unit of the chart: `a tolerance of 2 cm applies`. */
const LENGTH_IN_A_SENTENCE = new RegExp(`[\\d¼½¾⅛⅜⅝⅞⅓⅔]\\s*(?:(?:${WORDS})\\b|["”″]|''|’’)`, 'gi');

/** The unit that a heading states (`Chest (in)`, `Length, cm`), and the heading without it. */
export function headingUnit(heading: string): { readonly words: string; readonly unit: WrittenUnit | null } {
  const found = IN_BRACKETS.exec(heading) ?? AT_THE_END.exec(heading);
  if (!found?.[1]) return { words: heading, unit: null };
  const words = heading.replace(found[0], ' ').replace(/\s+in\s*$/i, '');
  return { words, unit: UNIT_WORDS[found[1].toLowerCase()] ?? null };
}

/** `In inches or cm`, `in/cm`: two units, and the short word is one of them. */
const EITHER = new RegExp(`\\bin\\s*(?:/|&|or|and)\\s*(?:${WORDS})\\b|(?:${WORDS})\\s*(?:/|&|or|and)\\s*in\\b`, 'i');

/** The unit a title or a remark names, or null when it names none or several. */
export function sentenceUnit(said: string): WrittenUnit | null {
  const sentence = said.replace(LENGTH_IN_A_SENTENCE, '');
  if (EITHER.test(sentence)) return null;
  const named = [...sentence.matchAll(IN_A_SENTENCE)].map(([, word]) => UNIT_WORDS[word?.toLowerCase() ?? ''] ?? null);
  const units = new Set([...named, headingUnit(sentence).unit].filter((unit) => unit !== null));
  const [unit] = units;
  return units.size === 1 && unit ? unit : null;
}

/** The unit written behind a number, or null for a bare one. */
export function numberUnit(cell: string): WrittenUnit | null {
  const written = ON_A_NUMBER.exec(cell)?.[1]?.toLowerCase();
  return written ? (UNIT_WORDS[written] ?? 'in') : null;
}

/** The number without its unit. */
export function bareNumber(cell: string): string {
  const written = ON_A_NUMBER.exec(cell)?.[1];
  return written ? cell.slice(0, cell.lastIndexOf(written)).trim() : cell;
}

/** The unit a cell names and nothing else (`cm`, `(inches)`), as charts do that give it a row or a column of its own. */
export function unitAlone(cell: string): WrittenUnit | null {
  const word = cell.toLowerCase().replace(/^[([]|[)\].]+$/g, '');
  return Object.hasOwn(UNIT_WORDS, word) ? (UNIT_WORDS[word] ?? null) : null;
}
