import type { ArtNote } from '@/lib/domain/art/art-notes';
import { ATTRIBUTES, DRAWN_ELEMENTS, MOVING_ELEMENTS, PROPERTIES, SILENT_ELEMENTS, TEXT_ELEMENTS } from './svg-allowed';
import { type CleanSheet, cleanDeclarations, cleanSheet, declarationsText, staysInside } from './svg-css';
import type { SvgElement } from './svg-tree';

/** A drawing with nothing in it but what is drawn, and what had to go. */
export type CleanSvg = {
  readonly root: SvgElement;
  readonly notes: readonly ArtNote[];
  readonly sheets: readonly CleanSheet[];
  /** The files inside `data:` addresses of its pictures. */
  readonly pictures: readonly Uint8Array[];
};

type Cleaning = {
  readonly notes: Set<ArtNote>;
  readonly sheets: CleanSheet[];
  readonly pictures: Uint8Array[];
};

/**
 * Walks a drawing and keeps only what is on the list of what is drawn: no scripts, nothing outside the file, nothing from
 * other namespaces, no text, since its font is not in the file and any other would be a different drawing.
 */
export function cleanSvg(root: SvgElement): CleanSvg {
  const cleaning: Cleaning = { notes: new Set(), sheets: [], pictures: [] };
  const cleaned = cleanElement(root, cleaning) ?? { name: 'svg', attributes: new Map(), children: [] };
  return { root: cleaned, notes: [...cleaning.notes], sheets: cleaning.sheets, pictures: cleaning.pictures };
}

function cleanElement(element: SvgElement, cleaning: Cleaning): SvgElement | null {
  const { name } = element;
  if (isHidden(element)) return null;
  if (name === 'style') return cleanStyle(element, cleaning);
  // A link draws what is in it.
  if (name === 'a') return cleanDrawn({ ...element, name: 'g' }, cleaning);
  if (DRAWN_ELEMENTS.has(name)) return name === 'image' ? cleanImage(element, cleaning) : cleanDrawn(element, cleaning);
  const note = noteForLeftOut(element);
  if (note) cleaning.notes.add(note);
  return null;
}

function noteForLeftOut(element: SvgElement): ArtNote | null {
  const { name } = element;
  if (SILENT_ELEMENTS.has(name)) return null;
  if (name === 'script') return 'scriptsLeftOut';
  if (MOVING_ELEMENTS.has(name)) return 'firstFrameOnly';
  if (!TEXT_ELEMENTS.has(name)) return 'partsLeftOut';
  return wordsIn(element).trim() === '' ? null : 'textLeftOut';
}

function isHidden({ attributes }: SvgElement): boolean {
  return attributes.get('display') === 'none' || /(^|;)\s*display\s*:\s*none\b/i.test(attributes.get('style') ?? '');
}

/** What takes something over from another element by `href`. */
const REFERRING_ELEMENTS: ReadonlySet<string> = new Set(['use', 'linearGradient', 'radialGradient', 'pattern']);

function cleanDrawn(element: SvgElement, cleaning: Cleaning): SvgElement {
  const attributes = cleanAttributes(element, cleaning);
  const href = element.attributes.get('href')?.trim();
  if (href !== undefined && REFERRING_ELEMENTS.has(element.name)) {
    if (/^#[^\\]+$/.test(href)) attributes.set('href', href);
    else cleaning.notes.add(element.name === 'use' ? 'linkedPicturesLeftOut' : 'partsLeftOut');
  }
  return { name: element.name, attributes, children: cleanChildren(element, cleaning) };
}

function cleanChildren({ name, children }: SvgElement, cleaning: Cleaning): SvgElement[] {
  const elements = children.filter((child) => typeof child !== 'string');
  // Drawing programs put something of their own beside the plain drawing, for each reader to take what it can.
  const known = name === 'switch' ? elements.filter((child) => DRAWN_ELEMENTS.has(child.name)) : [];
  return (known.length > 0 ? known : elements)
    .map((child) => cleanElement(child, cleaning))
    .filter((child) => child !== null);
}

function cleanAttributes({ attributes }: SvgElement, cleaning: Cleaning): Map<string, string> {
  const kept = new Map<string, string>();
  for (const [name, value] of attributes) {
    if (/^on/i.test(name)) cleaning.notes.add('scriptsLeftOut');
    else if (name === 'style') {
      const { kept: declarations, pointedOut } = cleanDeclarations(value);
      if (declarations.size > 0) kept.set('style', declarationsText(declarations));
      if (pointedOut) cleaning.notes.add('partsLeftOut');
    } else if (PROPERTIES.has(name) || ATTRIBUTES.has(name)) {
      if (staysInside(value)) kept.set(name, value);
      else cleaning.notes.add('partsLeftOut');
    }
  }
  return kept;
}

/** Packed pictures that may lie inside a drawing. */
const INSIDE_PICTURE = /^\s*data:image\/(png|jpe?g|gif|webp)\s*;\s*base64\s*,([A-Za-z0-9+/=\s]+)$/i;

function cleanImage(element: SvgElement, cleaning: Cleaning): SvgElement | null {
  const href = element.attributes.get('href') ?? '';
  const [, kind, packed] = INSIDE_PICTURE.exec(href) ?? [];
  if (!kind || !packed) {
    cleaning.notes.add(/^\s*data:/i.test(href) ? 'partsLeftOut' : 'linkedPicturesLeftOut');
    return null;
  }
  const bytes = Buffer.from(packed, 'base64');
  cleaning.pictures.push(bytes);
  const attributes = cleanAttributes(element, cleaning);
  attributes.set('href', `data:image/${kind.toLowerCase()};base64,${bytes.toString('base64')}`);
  return { name: 'image', attributes, children: [] };
}

function cleanStyle(element: SvgElement, cleaning: Cleaning): SvgElement | null {
  const sheet = cleanSheet(wordsIn(element));
  if (sheet.pointedOut) cleaning.notes.add('partsLeftOut');
  if (sheet.css === '') return null;
  cleaning.sheets.push(sheet);
  return { name: 'style', attributes: new Map(), children: [sheet.css] };
}

function wordsIn({ children }: SvgElement): string {
  return children.map((child) => (typeof child === 'string' ? child : wordsIn(child))).join('');
}

/** A cleaned drawing as a file that is drawn at so many pixels. */
export function svgText(
  root: SvgElement,
  { viewBox, widthPx, heightPx }: { viewBox: readonly number[]; widthPx: number; heightPx: number },
): string {
  const attributes = new Map(root.attributes);
  attributes.set('xmlns', 'http://www.w3.org/2000/svg');
  attributes.set('viewBox', viewBox.join(' '));
  attributes.set('width', String(widthPx));
  attributes.set('height', String(heightPx));
  const parts: string[] = [];
  write({ ...root, attributes }, parts);
  return parts.join('');
}

function write({ name, attributes, children }: SvgElement, parts: string[]): void {
  parts.push('<', name);
  for (const [attribute, value] of attributes) parts.push(' ', attribute, '="', escaped(value), '"');
  parts.push('>');
  for (const child of children) {
    if (typeof child === 'string') parts.push(escaped(child));
    else write(child, parts);
  }
  parts.push('</', name, '>');
}

function escaped(text: string): string {
  return text.replace(/[&<>"\t\n\r]/g, (character) => `&#${character.charCodeAt(0)};`);
}
