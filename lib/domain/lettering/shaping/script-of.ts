/**
 * Scripts told apart, ISO 15924 codes as regular expressions and HarfBuzz both take them: those that fonts in use draw. A
 * letter of another is left to HarfBuzz.
 */
const SCRIPTS = [
  ...['Latn', 'Cyrl', 'Grek', 'Hebr', 'Arab', 'Armn', 'Geor', 'Deva', 'Beng', 'Guru', 'Gujr', 'Orya', 'Taml', 'Telu'],
  ...['Knda', 'Mlym', 'Sinh', 'Thai', 'Laoo', 'Tibt', 'Mymr', 'Khmr', 'Ethi', 'Cher', 'Mong', 'Hang', 'Hira', 'Kana'],
  ...['Hani', 'Bopo', 'Syrc', 'Thaa', 'Nkoo', 'Tfng', 'Cans', 'Copt', 'Olck', 'Mtei', 'Adlm', 'Rohg', 'Vaii', 'Yiii'],
].map((code) => ({ code, pattern: new RegExp(`\\p{Script=${code}}`, 'u') }));

/** Punctuation, figures and spaces (Common), and marks that take the script of their letter (Inherited): UAX #24. */
const OF_ANY_SCRIPT = /[\p{Script=Zyyy}\p{Script=Zinh}]/u;

const known = new Map<string, string | null>();

/** Script of a character as ISO 15924 writes it; null where it goes with any script around it. */
export function scriptOf(character: string): string | null {
  const before = known.get(character);
  if (before !== undefined) return before;
  const script = OF_ANY_SCRIPT.test(character)
    ? null
    : (SCRIPTS.find(({ pattern }) => pattern.test(character))?.code ?? UNKNOWN_SCRIPT);
  known.set(character, script);
  return script;
}

/** A script that is not told apart from others: ISO 15924's code for an uncoded one. */
export const UNKNOWN_SCRIPT = 'Zzzz';
