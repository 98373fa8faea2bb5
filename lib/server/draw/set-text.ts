import type { Typeface } from '../text/outline-text';

/** How words are set on a sheet: the height of their capitals and their colour. */
export type TextStyle = { readonly typeface: Typeface; readonly capPx: number; readonly hex: string };

/** Distance from one baseline to the next, in heights of a capital. */
const LINE_CAPS = 2.05;

/** Words set in lines no wider than asked, as SVG; `heightPx` runs from the first capitals' tops to the last baseline. */
export type SetText = { readonly svg: string; readonly heightPx: number; readonly widthPx: number };

/** The width of words in one line, px. */
export function textWidthPx(text: string, { typeface, capPx }: TextStyle): number {
  return typeface.outline(typeface.drawable(text), capPx, { x: 0, y: 0 }).widthMm;
}

/**
 * Sets words from (x, top of the capitals), broken between words where they would run past `maxWidthPx`. Letters that no
 * font has are left out: the picture must not fail over one, and the words are also on the page.
 */
export function setText(
  text: string,
  style: TextStyle,
  at: {
    readonly x: number;
    readonly top: number;
    readonly maxWidthPx?: number;
    readonly align?: 'left' | 'right' | 'middle';
  },
): SetText {
  const lines = brokenLines(style.typeface.drawable(text), style, at.maxWidthPx ?? Number.POSITIVE_INFINITY);
  const widths = lines.map((line) => textWidthPx(line, style));
  const shift = { left: 0, middle: 0.5, right: 1 }[at.align ?? 'left'];
  const paths = lines.map((line, index) => {
    const x = at.x - (widths[index] ?? 0) * shift;
    const y = at.top + style.capPx * (1 + index * LINE_CAPS);
    return style.typeface.outline(line, style.capPx, { x, y }).d;
  });
  return {
    svg: `<path d="${paths.join('')}" fill="${style.hex}"/>`,
    heightPx: style.capPx * (1 + (lines.length - 1) * LINE_CAPS),
    widthPx: Math.max(0, ...widths),
  };
}

function brokenLines(text: string, style: TextStyle, maxWidthPx: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((each) => each !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidthPx(longer, style) > maxWidthPx) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
}
