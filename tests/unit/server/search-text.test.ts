import { describe, expect, it } from 'vitest';
import { searchText } from '@/lib/server/db/search-text';

describe('what a job is found by', () => {
  // Unicode Standard Annex 15: NFKD takes letters and marks apart.
  it.each([
    ['Łukasz Nguyễn', 'lukasz nguyen'],
    ['ÉCOLE  d’Été\n2026', 'ecole d’ete 2026'],
    ['Straße', 'strasse'],
    ['Ærø Brød', 'aero brod'],
    ['ﬁne Ｔｅｅｓ', 'fine tees'],
    ['İstanbul', 'istanbul'],
    ['Ирина 山', 'ирина 山'],
  ])('folds %j', (typed, folded) => {
    expect(searchText(typed)).toBe(folded);
    expect(searchText(folded)).toBe(folded);
  });

  it('joins what there is', () => {
    expect(searchText('Autumn relay', null, ' Wren ', '')).toBe('autumn relay wren');
    expect(searchText(null, '')).toBe('');
  });
});
