import { existsSync, readFileSync } from 'node:fs';
import { type BaseDirection, bidiLevels, inVisualOrder } from '@/lib/domain/lettering/shaping/bidi-levels';

// Source: BidiCharacterTest.txt and BidiTest.txt of the Unicode Character Database (Debian unicode-data), which every
// implementation of UAX #9 is expected to pass.

const FOLDER = '/usr/share/unicode';

export const hasBidiTests = existsSync(`${FOLDER}/BidiCharacterTest.txt`) && existsSync(`${FOLDER}/BidiTest.txt`);

/** One case: a line, and what is to come of it. A level is null where the algorithm takes the character away. */
export type BidiCase = {
  readonly text: string;
  readonly base: BaseDirection;
  readonly levels: readonly (number | null)[];
  /** Indices of characters from left to right. */
  readonly order: readonly number[];
};

/** Every `step`th case of BidiCharacterTest.txt. */
export function characterCases(step = 1): BidiCase[] {
  return dataLines('BidiCharacterTest.txt')
    .filter((_, index) => index % step === 0)
    .map((line) => {
      const [codes = '', direction = '', , levels = '', order = ''] = line.split(';');
      return {
        text: words(codes)
          .map((code) => String.fromCodePoint(Number.parseInt(code, 16)))
          .join(''),
        base: ([...BASES, null] as const)[Number(direction)] ?? null,
        levels: levelsOf(levels),
        order: words(order).map(Number),
      };
    });
}

/** A character of each Bidi_Class, for the cases that name classes only. */
const OF_CLASS: Readonly<Record<string, string>> = {
  ...{ L: 'a', R: '\u05d0', AL: '\u0627', EN: '0', ES: '-', ET: '#', AN: '\u0660', CS: ',', B: '\u2029', S: '\t' },
  ...{ WS: ' ', ON: '!', BN: '\u00ad', NSM: '\u0300', LRO: '\u202d', RLO: '\u202e', LRE: '\u202a', RLE: '\u202b' },
  ...{ PDF: '\u202c', LRI: '\u2066', RLI: '\u2067', FSI: '\u2068', PDI: '\u2069' },
};

const BASES = ['leftToRight', 'rightToLeft'] as const;

/** Every `step`th case of BidiTest.txt, for each base direction it names. */
export function classCases(step = 1): BidiCase[] {
  let levels: (number | null)[] = [];
  let order: number[] = [];
  const cases: BidiCase[] = [];
  for (const [index, line] of dataLines('BidiTest.txt').entries()) {
    if (line.startsWith('@Levels:')) levels = levelsOf(line.slice(8));
    else if (line.startsWith('@Reorder:')) order = words(line.slice(9)).map(Number);
    else if (!line.startsWith('@') && index % step === 0) {
      const [classes = '', bits = '0'] = line.split(';');
      const text = words(classes)
        .map((name) => OF_CLASS[name] ?? '')
        .join('');
      for (const [bit, base] of ([null, ...BASES] as const).entries()) {
        if ((Number.parseInt(bits.trim(), 16) & (1 << bit)) !== 0) cases.push({ text, base, levels, order });
      }
    }
  }
  return cases;
}

/** Whether our levels and our order are those of the case. */
export function isAsExpected({ text, base, levels, order }: BidiCase): boolean {
  const byUnit = bidiLevels(text, base);
  let unit = 0;
  const stretches = Array.from(text).map((character, index) => {
    const level = byUnit[unit] ?? 0;
    unit += character.length;
    return { level, index };
  });
  const kept = stretches.filter(({ index }) => levels[index] !== null);
  const seen = inVisualOrder(kept).map(({ index }) => index);
  return kept.every(({ level, index }) => level === levels[index]) && seen.join() === order.join();
}

function dataLines(file: string): string[] {
  return readFileSync(`${FOLDER}/${file}`, 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
}

function words(text: string): string[] {
  return text.split(/\s+/).filter((word) => word !== '');
}

function levelsOf(text: string): (number | null)[] {
  return words(text).map((level) => (level === 'x' ? null : Number(level)));
}
