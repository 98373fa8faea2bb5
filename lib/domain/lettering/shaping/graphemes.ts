const segmenter = new Intl.Segmenter('und', { granularity: 'grapheme' });

/** A text in letters as people count them: a base with its accents is one. */
export function graphemes(text: string): string[] {
  return Array.from(segmenter.segment(text), ({ segment }) => segment);
}
