/** Whether every word that was typed begins a word of the text, case and accents aside. Nothing typed matches everything. */
export function matchesTyped(text: string, typed: string): boolean {
  const words = folded(text).split(' ');
  return folded(typed)
    .split(' ')
    .every((part) => words.some((word) => word.startsWith(part)));
}

function folded(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}°+-]+/gu, ' ')
    .trim();
}
