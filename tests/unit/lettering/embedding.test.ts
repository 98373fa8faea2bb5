import { describe, expect, it } from 'vitest';
import { embeddingOf } from '@/lib/domain/lettering/embedding';

// Source: OpenType 1.9, OS/2 table, fsType (from memory).
describe('embedding bits', () => {
  it.each([
    [0x0000, 'installable'],
    [0x0002, 'restricted'],
    [0x0004, 'previewAndPrint'],
    [0x0008, 'editable'],
    [0x0104, 'previewAndPrint'],
    [0x0200, 'restricted'],
    [0x0100, 'installable'],
  ] as const)('%i allow %s', (fsType, allowed) => {
    expect(embeddingOf(fsType)).toBe(allowed);
  });

  it('count the least restrictive of several', () => {
    expect([embeddingOf(0x0006), embeddingOf(0x000e)]).toEqual(['previewAndPrint', 'editable']);
  });
});
