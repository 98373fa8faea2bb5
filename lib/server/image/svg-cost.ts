import type { CleanSvg } from './clean-svg';
import { REFERRED_ELEMENTS } from './svg-allowed';
import { cleanDeclarations, ownReference, type RuleTarget } from './svg-css';
import type { SvgElement } from './svg-tree';

/** What drawing comes to once everything that is referred to is drawn where it is used. */
type Cost = { readonly shapes: number; readonly effects: number };

/** Past this a drawing is not drawn: a hundred times what a crest has; common practice, no source. */
const MOST_SHAPES = 100_000;
/** Each is a pass over all of the picture. */
const MOST_EFFECTS = 60;
/** Selectors are tried on each element. */
const MOST_RULE_TRIES = 20_000_000;

/**
 * Whether a drawing can be drawn in good time. A few lines that use one another ten times over, ten levels deep, are ten
 * thousand million shapes, so each element's cost is counted once and multiplied, and nothing is drawn to find out.
 */
export function canBeDrawn({ root, sheets }: CleanSvg): boolean {
  const byId = new Map<string, SvgElement>();
  const elements = elementsOf(root, byId);
  const rules = sheets.reduce((sum, sheet) => sum + sheet.rules, 0);
  if (rules * elements > MOST_RULE_TRIES) return false;
  const { shapes, effects } = costOf(root, { byId, sheets, known: new Map() }, 0);
  return shapes <= MOST_SHAPES && effects <= MOST_EFFECTS;
}

type Counting = {
  readonly byId: ReadonlyMap<string, SvgElement>;
  readonly sheets: CleanSvg['sheets'];
  /** Null while an element is being counted: what refers to itself is drawn by no renderer. */
  readonly known: Map<SvgElement, Cost | null>;
};

function elementsOf(element: SvgElement, byId: Map<string, SvgElement>): number {
  const id = element.attributes.get('id');
  if (id !== undefined && !byId.has(id)) byId.set(id, element);
  let count = 1;
  for (const child of element.children) if (typeof child !== 'string') count += elementsOf(child, byId);
  return count;
}

const NOTHING: Cost = { shapes: 0, effects: 0 };
const TOO_MUCH: Cost = { shapes: Number.POSITIVE_INFINITY, effects: 0 };

/** As long as a chain of elements may be that lie in one another, or refer to one another. */
const LONGEST_CHAIN = 1_000;

function costOf(element: SvgElement, counting: Counting, depth: number): Cost {
  if (depth > LONGEST_CHAIN) return TOO_MUCH;
  const known = counting.known.get(element);
  if (known !== undefined) return known ?? NOTHING;
  counting.known.set(element, null);
  let shapes = 1;
  let effects = element.name.startsWith('fe') ? 1 : 0;
  const add = (cost: Cost, times: number) => {
    shapes += cost.shapes * times;
    effects += cost.effects * times;
  };
  for (const child of element.children) {
    const isDrawnHere = typeof child !== 'string' && !REFERRED_ELEMENTS.has(child.name);
    if (isDrawnHere) add(costOf(child, counting, depth + 1), 1);
  }
  for (const { id, times } of references(element, counting.sheets)) {
    const referred = counting.byId.get(id);
    if (referred) add(costOf(referred, counting, depth + 1), times);
  }
  const cost = { shapes, effects };
  counting.known.set(element, cost);
  return cost;
}

/** The elements that are drawn, or painted with, where this one is; a marker once a corner. */
function references(element: SvgElement, sheets: CleanSvg['sheets']): { id: string; times: number }[] {
  const { attributes } = element;
  const found: { id: string; times: number }[] = [];
  const addFrom = (property: string, value: string) => {
    const id = ownReference(value);
    if (id !== null) found.push({ id, times: property.startsWith('marker') ? cornersOf(element) : 1 });
  };
  const href = attributes.get('href');
  if (href?.startsWith('#')) found.push({ id: href.slice(1), times: 1 });
  for (const [property, value] of attributes) if (property !== 'style') addFrom(property, value);
  for (const [property, value] of cleanDeclarations(attributes.get('style') ?? '').kept) addFrom(property, value);
  for (const sheet of sheets) {
    for (const { targets, declarations } of sheet.referring) {
      if (!targets.some((target) => mayMean(target, element))) continue;
      for (const [property, value] of declarations) addFrom(property, value);
    }
  }
  return found;
}

function mayMean({ tag, id, classes }: RuleTarget, { name, attributes }: SvgElement): boolean {
  const own = (attributes.get('class') ?? '').split(/\s+/);
  const isOther = (tag !== null && tag !== name) || (id !== null && id !== attributes.get('id'));
  return !isOther && classes.every((each) => own.includes(each));
}

/** At most as many corners as a path has letters and numbers. */
function cornersOf({ attributes }: SvgElement): number {
  const words = attributes.get('d') ?? attributes.get('points') ?? '';
  return Math.max(2, (words.match(/[a-z]|-?[\d.]+/gi) ?? []).length);
}
