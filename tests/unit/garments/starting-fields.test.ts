import { describe, expect, it } from 'vitest';
import { colourChoice } from '@/components/garments/chosen-cloth';
import type { OfferedStyle } from '@/components/garments/offered-style';
import { fieldsFor, startingFields } from '@/components/garments/starting-fields';

function offered(name: string, fabric: string, colourIds: string[] = []): OfferedStyle {
  return {
    styleId: `starter:${name}`,
    shelf: 'tops',
    kind: 'crewTee',
    ageBand: 'adult',
    label: name,
    sizesLabel: name,
    name,
    fabric,
    colours: colourIds.map((colourId) => ({ colourId, name: colourId, hex: '#000000', heather: false })),
    secondCloth: null,
    middle: null,
  };
}

const tee = offered('Tee', 'Cotton');
const hood = offered('Hood', 'Cotton blend');
const dyed = offered('Dyed tee', 'Cotton', ['kelp', 'sand']);

describe('choosing another style', () => {
  it('brings its name and fabric where the maker wrote none of their own', () => {
    expect(fieldsFor(hood, tee, startingFields(tee))).toMatchObject({ name: 'Hood', fabric: 'Cotton blend' });
    const typed = { ...startingFields(tee), name: 'Relay tee', fabric: 'Polyester' };
    expect(fieldsFor(hood, tee, typed)).toMatchObject({ name: 'Relay tee', fabric: 'Polyester' });
  });

  it('keeps a colour that it comes in, and otherwise begins with its first', () => {
    expect(fieldsFor(hood, tee, { ...startingFields(tee), cloth: 'navy' }).cloth).toBe('navy');
    expect(fieldsFor(dyed, tee, { ...startingFields(tee), cloth: 'navy' }).cloth).toBe(
      colourChoice({ colourId: 'kelp' }),
    );
    const sand = colourChoice({ colourId: 'sand' });
    expect(fieldsFor(dyed, dyed, { ...startingFields(dyed), cloth: sand }).cloth).toBe(sand);
    expect(fieldsFor(tee, dyed, { ...startingFields(dyed), cloth: sand }).cloth).toBe('white');
    expect(fieldsFor(dyed, tee, { ...startingFields(tee), cloth: 'own' }).cloth).toBe('own');
  });

  it('keeps everything else that was typed', () => {
    const typed = { ...startingFields(tee), 'also:starter:x': 'yes', ownName: 'Moss' };
    expect(fieldsFor(hood, tee, typed)).toMatchObject({
      'also:starter:x': 'yes',
      ownName: 'Moss',
      style: hood.styleId,
    });
  });
});
