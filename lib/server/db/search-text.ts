// Letters that Unicode does not take apart into a plain letter and a mark. From memory; not complete, and need not be.
const plainLetters: Readonly<Record<string, string>> = {
  æ: 'ae',
  ð: 'd',
  đ: 'd',
  ħ: 'h',
  ı: 'i',
  ł: 'l',
  ø: 'o',
  œ: 'oe',
  ß: 'ss',
  þ: 'th',
};

/**
 * What the bench finds a job by: the given words in lower case, without accents (Unicode NFKD), single-spaced. Fold what is
 * typed into the search field the same way.
 */
export function searchText(...parts: readonly (string | null)[]): string {
  return parts
    .filter((part) => part !== null)
    .join(' ')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[æðđħıłøœßþ]/g, (letter) => plainLetters[letter] ?? letter)
    .replace(/\s+/g, ' ')
    .trim();
}
