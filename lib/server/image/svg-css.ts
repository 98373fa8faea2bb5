import { type CssNode, type Declaration, generate, List, parse, type Selector, walk } from 'css-tree';
import { PROPERTIES } from './svg-allowed';

/** Which elements a rule is for, by the last part of its selector; what stands before that only makes it fewer. */
export type RuleTarget = {
  readonly tag: string | null;
  readonly id: string | null;
  readonly classes: readonly string[];
};

export type CleanSheet = {
  readonly css: string;
  readonly rules: number;
  /** Rules that refer to other elements: to which, and from which. */
  readonly referring: readonly {
    readonly targets: readonly RuleTarget[];
    readonly declarations: ReadonlyMap<string, string>;
  }[];
  /** Something that would have been drawn was outside the file. */
  readonly pointedOut: boolean;
};

/** `url(#name)` and nothing else that is fetched; the name, or null. */
export function ownReference(value: string): string | null {
  return /^\s*url\(\s*(["']?)#([^"')\\]+)\1\s*\)/i.exec(value)?.[2] ?? null;
}

/** Whether a value names nothing outside the file. A backslash can spell `url` in ways that hide it (CSS Syntax 3, 4.3.7). */
export function staysInside(value: string): boolean {
  if (value.includes('\\')) return false;
  const fetching = value.match(/(url|src|image|image-set|element|attr|var|env|expression)\s*\(/gi) ?? [];
  return fetching.length === 0 || (fetching.length === 1 && ownReference(value) !== null);
}

/** The declarations of a `style` attribute that may stay: property → value, written anew. */
export function cleanDeclarations(style: string): { kept: Map<string, string>; pointedOut: boolean } {
  const list = parse(style, { context: 'declarationList', onParseError: () => {} });
  return keepDeclarations(list.type === 'DeclarationList' ? list.children : new List<CssNode>());
}

/** A style sheet with nothing but plain rules of known properties, read by a CSS parser and written anew. */
export function cleanSheet(text: string): CleanSheet {
  const sheet = parse(text, { onParseError: () => {} });
  const written: string[] = [];
  const referring: { targets: RuleTarget[]; declarations: Map<string, string> }[] = [];
  let pointedOut = false;
  if (sheet.type !== 'StyleSheet') return { css: '', rules: 0, referring, pointedOut };
  for (const rule of sheet.children) {
    if (rule.type !== 'Rule' || rule.prelude.type !== 'SelectorList') continue;
    const { kept, pointedOut: out } = keepDeclarations(rule.block.children);
    pointedOut ||= out;
    if (kept.size === 0) continue;
    written.push(`${generate(rule.prelude)}{${declarationsText(kept)}}`);
    if ([...kept.values()].every((value) => ownReference(value) === null)) continue;
    const targets = rule.prelude.children
      .toArray()
      .flatMap((each) => (each.type === 'Selector' ? [targetOf(each)] : []));
    referring.push({ targets, declarations: kept });
  }
  return { css: written.join('\n'), rules: written.length, referring, pointedOut };
}

export function declarationsText(kept: ReadonlyMap<string, string>): string {
  return [...kept].map(([property, value]) => `${property}:${value}`).join(';');
}

function keepDeclarations(nodes: List<CssNode>): { kept: Map<string, string>; pointedOut: boolean } {
  const kept = new Map<string, string>();
  let pointedOut = false;
  for (const node of nodes) {
    if (node.type !== 'Declaration' || !PROPERTIES.has(node.property.toLowerCase())) continue;
    const value = valueText(node);
    if (value !== null && staysInside(value)) kept.set(node.property.toLowerCase(), value);
    else pointedOut = true;
  }
  return { kept, pointedOut };
}

/** A value written anew from what the parser understood; null for what it did not. */
function valueText({ value }: Declaration): string | null {
  let isWhole = value.type !== 'Raw';
  walk(value, (node) => {
    if (node.type === 'Raw') isWhole = false;
  });
  return isWhole ? generate(value) : null;
}

function targetOf(selector: Selector): RuleTarget {
  let [tag, id]: (string | null)[] = [null, null];
  let classes: string[] = [];
  for (const node of selector.children) {
    if (node.type === 'Combinator') [tag, id, classes] = [null, null, []];
    if (node.type === 'TypeSelector' && node.name !== '*') tag = node.name;
    if (node.type === 'IdSelector') id = node.name;
    if (node.type === 'ClassSelector') classes.push(node.name);
  }
  return { tag: tag ?? null, id: id ?? null, classes };
}
