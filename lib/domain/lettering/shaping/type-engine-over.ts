import type { FontRef } from '../lettering';
import type { SetLine, TypeEngine } from '../type-engine';
import { type NamedFont, outlineLine } from './outline-line';

/** As many set lines as an engine keeps: a list of the largest size in a handful of settings. */
const KEPT_LINES = 4_000;

/** An engine over opened fonts. Those of `behind` stand in, in their order, for what the font asked for lacks. */
export function typeEngineOver(fonts: readonly NamedFont[], behind: readonly NamedFont[]): TypeEngine {
  const bySha256 = new Map([...behind, ...fonts].map((font) => [font.ref.sha256, font]));
  const kept = new Map<string, SetLine>();
  return {
    has: ({ sha256 }) => bySha256.has(sha256),
    outlineLine: (text, ref, features = []) => {
      const key = JSON.stringify([ref.sha256, text, features]);
      const before = kept.get(key);
      if (before) return before;
      const line = outlineLine(text, chainOf(ref, bySha256, behind), features);
      const oldest = kept.size >= KEPT_LINES ? kept.keys().next().value : undefined;
      if (oldest !== undefined) kept.delete(oldest);
      kept.set(key, line);
      return line;
    },
  };
}

function chainOf(
  ref: FontRef,
  bySha256: ReadonlyMap<string, NamedFont>,
  behind: readonly NamedFont[],
): readonly NamedFont[] {
  const asked = bySha256.get(ref.sha256);
  if (!asked) throw new Error(`The font ${ref.family} ${ref.style} (${ref.sha256}) was not loaded.`);
  return [asked, ...behind.filter((font) => font !== asked)];
}
