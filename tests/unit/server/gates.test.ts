import { readdirSync, readFileSync } from 'node:fs';
import { sep } from 'node:path';
import { describe, expect, it } from 'vitest';

const GATE = /await (requireMaker|makerFromHeaders|gate\w*|revisionOfPage)\(/;

/** Bodies of the functions a module exports, by name: enough to see that each asks for the maker. */
function exportedFunctions(source: string): { name: string; body: string }[] {
  return source
    .split(/^export (?=(?:default )?async function )/m)
    .slice(1)
    .map((text) => ({ name: /function (\w+)/.exec(text)?.[1] ?? '', body: text }));
}

/** Files of the bench whose name ends so, from the project's root. */
function benchFiles(ending: string): string[] {
  return readdirSync('app/(bench)', { recursive: true, encoding: 'utf8' })
    .map((path) => `app/(bench)/${path.split(sep).join('/')}`)
    .filter((path) => path.endsWith(ending));
}

describe('what only a maker may do', () => {
  const actions = benchFiles('.ts').filter((path) => readFileSync(path, 'utf8').startsWith("'use server'"));

  it('finds the bench’s actions', () => {
    expect(actions.length).toBeGreaterThan(4);
  });

  // Signing out needs no session to be harmless: without one there is nothing to end.
  it.each(actions.filter((path) => !path.endsWith('/sign-out.ts')))(
    'asks for the maker in every action of %s',
    (path) => {
      const functions = exportedFunctions(readFileSync(path, 'utf8'));
      expect(functions.length).toBeGreaterThan(0);
      for (const { name, body } of functions) expect(GATE.test(body), name).toBe(true);
    },
  );

  it.each(benchFiles('page.tsx'))('asks for the maker on %s', (path) => {
    const source = readFileSync(path, 'utf8');
    expect(GATE.test(source)).toBe(true);
  });
});
