/** The same words with no line broken inside a length: `3 1/2 in` stays together. */
export function unbroken(words: string): string {
  return words.replace(/(?<=\d) (?=\d+\/\d|in\b|cm\b)/g, '\u00a0');
}
