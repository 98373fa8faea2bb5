import { describe, expect, it } from 'vitest';
import { chosenCloth, clothMistakes, colourChoice } from '@/components/garments/chosen-cloth';
import { translatorFor } from '@/lib/messages/translator';

const t = translatorFor('en', 'garments');
const plain = { colours: [], hasSecond: false };
const raglan = { colours: [], hasSecond: true };
const listed = {
  colours: [
    { colourId: 'kelp', name: 'Kelp', hex: '#2F5D50', heather: true, secondName: 'Sand', secondHex: '#D9C8A0' },
  ],
  hasSecond: true,
};

describe('a cloth', () => {
  it('is a usual colour under its usual name', () => {
    expect(chosenCloth(t, { cloth: 'navy', heather: 'yes' }, plain)).toEqual({
      name: 'Navy',
      hex: '#20344F',
      heather: true,
    });
  });

  it('is a colour of the blank’s list, with its second cloth, whatever else is ticked', () => {
    const cloth = colourChoice({ colourId: 'kelp' });
    expect(chosenCloth(t, { cloth, heather: '', second: 'red' }, listed)).toEqual({
      name: 'Kelp',
      hex: '#2F5D50',
      heather: true,
      secondName: 'Sand',
      secondHex: '#D9C8A0',
    });
  });

  it('is no colour that the blank does not come in', () => {
    expect(clothMistakes({ cloth: colourChoice({ colourId: 'gone' }) }, listed)).toEqual({ cloth: 'required' });
    expect(chosenCloth(t, { cloth: colourChoice({ colourId: 'kelp' }) }, plain)).toBeNull();
  });

  it('is a colour of the maker’s own, once it has a name and a colour', () => {
    expect(clothMistakes({ cloth: 'own', ownName: ' ', ownHex: 'green' }, plain)).toEqual({
      ownName: 'required',
      ownHex: 'invalid',
    });
    expect(chosenCloth(t, { cloth: 'own', ownName: ' Bottle green ', ownHex: '#0a4a33' }, plain)).toEqual({
      name: 'Bottle green',
      hex: '#0A4A33',
      heather: false,
    });
  });

  it('has a second cloth where the kind has one, and only there', () => {
    const two = { cloth: 'white', second: 'navy' };
    expect(chosenCloth(t, two, raglan)).toMatchObject({ name: 'White', secondName: 'Navy', secondHex: '#20344F' });
    expect(chosenCloth(t, two, plain)).toEqual({ name: 'White', hex: '#FFFFFF', heather: false });
    expect(chosenCloth(t, { cloth: 'white', second: '' }, raglan)).not.toHaveProperty('secondHex');
    expect(clothMistakes({ ...two, second: 'own' }, raglan)).toEqual({ secondName: 'required', secondHex: 'invalid' });
    expect(clothMistakes({ ...two, second: 'own' }, plain)).toEqual({});
  });
});
