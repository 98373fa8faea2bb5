import { SaxesParser } from 'saxes';

/** An element of an SVG: local names, attributes without a namespace, and `href` whichever way it was written. */
export type SvgElement = {
  readonly name: string;
  readonly attributes: Map<string, string>;
  readonly children: (SvgElement | string)[];
};

export type SvgTree =
  | { readonly ok: true; readonly root: SvgElement }
  | { readonly ok: false; readonly reason: 'damaged' | 'tooInvolved' };

const SVG_SPACE = 'http://www.w3.org/2000/svg';
const XLINK_SPACE = 'http://www.w3.org/1999/xlink';

/** Far more than any drawing for a garment has; common practice, no source. */
export const MOST_SVG_ELEMENTS = 100_000;
const DEEPEST = 200;
/** Drawing programs put namespaces into entities, and nothing longer. */
const LONGEST_ENTITY = 512;
const MOST_ENTITIES = 64;
/** How much text all references to entities may put into the file. */
const MOST_EXPANDED = 4_000_000;

class TooInvolved extends Error {}

/**
 * Reads an SVG with a strict XML parser that opens nothing. Entities are taken where they stand for plain text, as drawing
 * programs write namespaces; one that refers to another, or to a file, is never expanded. Elements of other namespaces are
 * not drawings and are passed over.
 */
export function readSvgTree(text: string): SvgTree {
  try {
    const root = parse(text);
    return root ? { ok: true, root } : { ok: false, reason: 'damaged' };
  } catch (error) {
    return { ok: false, reason: error instanceof TooInvolved ? 'tooInvolved' : 'damaged' };
  }
}

function parse(text: string): SvgElement | null {
  const parser = new SaxesParser({ xmlns: true, position: false });
  let root: SvgElement | null = null;
  let count = 0;
  // Null stands for an element that is passed over, with all that is in it.
  const open: (SvgElement | null)[] = [];

  parser.on('error', (error) => {
    throw error;
  });
  parser.on('doctype', (doctype) => {
    const entities = plainEntities(doctype);
    const references = Object.keys(entities).length === 0 ? 0 : text.split('&').length - 1;
    if (references * LONGEST_ENTITY > MOST_EXPANDED) throw new TooInvolved('entities');
    Object.assign(parser.ENTITIES, entities);
  });
  parser.on('opentag', ({ local, uri, attributes }) => {
    count += 1;
    if (count > MOST_SVG_ELEMENTS || open.length > DEEPEST) throw new TooInvolved('elements');
    const parent = open.at(-1);
    const isDrawing = uri === SVG_SPACE || uri === '';
    const element = isDrawing && parent !== null ? { name: local, attributes: plain(attributes), children: [] } : null;
    if (element && parent) parent.children.push(element);
    if (element && open.length === 0 && local === 'svg') root = element;
    open.push(element);
  });
  parser.on('closetag', () => {
    open.pop();
  });
  const addText = (words: string) => {
    open.at(-1)?.children.push(words);
  };
  parser.on('text', addText);
  parser.on('cdata', addText);
  parser.write(text).close();
  return root;
}

type ReadAttribute = { readonly local: string; readonly uri: string; readonly value: string };

function plain(attributes: Record<string, ReadAttribute>): Map<string, string> {
  const kept = new Map<string, string>();
  for (const { local, uri, value } of Object.values(attributes)) {
    if (uri === '') kept.set(local, value);
    else if (uri === XLINK_SPACE && local === 'href' && !kept.has('href')) kept.set('href', value);
  }
  return kept;
}

/** The entities of a document type that stand for plain text: name → text. */
function plainEntities(doctype: string): Record<string, string> {
  const found = [...doctype.matchAll(/<!ENTITY\s+([\w.:-]+)\s+(?:"([^"]*)"|'([^']*)')\s*>/g)];
  if (found.length > MOST_ENTITIES) throw new TooInvolved('entities');
  const entities: Record<string, string> = {};
  for (const [, name = '', quoted, apostrophed] of found) {
    const value = quoted ?? apostrophed ?? '';
    if (/[&%<]/.test(value) || value.length > LONGEST_ENTITY) throw new TooInvolved('entities');
    entities[name] = value;
  }
  return entities;
}
