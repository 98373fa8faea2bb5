import { describe, expect, it } from 'vitest';
import { areaAt } from '@/components/art-page/enclosed-areas';

describe('which enclosed area a place is in', () => {
  const outer = { x: 10, y: 10, width: 50, height: 40 };
  const inner = { x: 20, y: 20, width: 10, height: 10 };

  it('is the smallest that holds it, as an O within an O', () => {
    expect(areaAt([outer, inner], { x: 24, y: 24 })).toBe(1);
    expect(areaAt([inner, outer], { x: 24, y: 24 })).toBe(0);
    expect(areaAt([outer, inner], { x: 12, y: 45 })).toBe(0);
  });

  it('is none beside them all', () => {
    expect(areaAt([outer, inner], { x: 60, y: 20 })).toBeNull();
    expect(areaAt([], { x: 1, y: 1 })).toBeNull();
  });
});
