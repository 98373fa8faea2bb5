import { describe, expect, it } from 'vitest';
import { contentPolicy } from '@/lib/server/edge/content-policy';

function directivesOf(policy: string): Record<string, string[]> {
  return Object.fromEntries(
    policy.split('; ').map((directive) => {
      const [name = '', ...sources] = directive.split(' ');
      return [name, sources];
    }),
  );
}

// Content Security Policy Level 3
describe('the content policy', () => {
  const served = { nonce: 'Zm9v', wasm: false, development: false };

  it('runs no inline script or style without the nonce, and evaluates nothing', () => {
    const policy = contentPolicy(served);
    expect(policy).not.toMatch(/unsafe/);
    expect(directivesOf(policy)['script-src']).toContain("'nonce-Zm9v'");
    expect(directivesOf(policy)['style-src']).toContain("'nonce-Zm9v'");
  });

  it('names no other origin and no wildcard', () => {
    const sources = Object.values(directivesOf(contentPolicy({ ...served, wasm: true }))).flat();
    expect(sources.filter((source) => !/^('.+'|data:|blob:)$/.test(source))).toEqual([]);
  });

  it('cannot be framed, rebased or made to send its forms elsewhere', () => {
    expect(directivesOf(contentPolicy(served))).toMatchObject({
      'frame-ancestors': ["'none'"],
      'base-uri': ["'none'"],
      'object-src': ["'none'"],
      'form-action': ["'self'"],
    });
  });

  it('compiles WebAssembly only where it is asked for', () => {
    expect(contentPolicy({ ...served, wasm: true })).toContain("'wasm-unsafe-eval'");
    expect(contentPolicy(served)).not.toContain('wasm');
  });
});
