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
const AT_THE_END = new RegExp(`(?:[\\s,:;/-]|\\bin\\s)(${WORDS}|["”″])\\.?$`, 'i');
/** Said in passing: `All sizes in inches`. Here `in` is a preposition. */
const IN_A_SENTENCE = new RegExp(`\\b(${WORDS.replace(/\bin\|ins\|/, '')})\\b`, 'i');
const ON_A_NUMBER = /[\d¼½¾⅛⅜⅝⅞⅓⅔]\s*(inches|inch|in|cm|mm|"|”|″|''|’’)\.?$/i;

/** The unit that a heading states (`Chest (in)`, `Length, cm`), and the heading without it. */
export function headingUnit(heading: string): { readonly words: string; readonly unit: WrittenUnit | null } {
  const found = IN_BRACKETS.exec(heading) ?? AT_THE_END.exec(heading);
  if (!found?.[1]) return { words: heading, unit: null };
  const words = heading.replace(found[0], ' ').replace(/\s+in\s*$/i, '');
  return { words, unit: UNIT_WORDS[found[1].toLowerCase()] ?? null };
}

/** The unit a title or a remark names, or null when it names none or several. */
export function sentenceUnit(sentence: string): WrittenUnit | null {
  const stated = headingUnit(sentence).unit;
  if (stated) return stated;
  const [first, ...others] = sentence.matchAll(new RegExp(IN_A_SENTENCE, 'gi'));
  const unit = first?.[1] ? UNIT_WORDS[first[1].toLowerCase()] : undefined;
  return unit && others.every((other) => UNIT_WORDS[other[1]?.toLowerCase() ?? ''] === unit) ? unit : null;
}

/** The unit written behind a number, or null for a bare one. */
export function numberUnit(cell: string): WrittenUnit | null {
  const written = ON_A_NUMBER.exec(cell)?.[1]?.toLowerCase();
  if (!written) return null;
  return written === 'cm' || written === 'mm' ? written : 'in';
}
