import { describe, expect, it } from 'vitest';
import { AGE_BANDS } from '@/lib/domain/garment/kinds';
import { LOCATION_IDS, LOCATIONS } from '@/lib/domain/layout/locations';
import { acrossReading, type PrintReading } from '@/lib/domain/layout/readings';
import { umFromInches } from '@/lib/domain/measure/length';
import { chestWords, readingLine, readingWords, sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';

const t = translatorFor('en', 'readings');

function reading(locationId: keyof typeof LOCATIONS, width: number, drop: number, across: number): PrintReading {
  const { measuredFrom, edge } = LOCATIONS[locationId];
  return {
    widthUm: umFromInches(width),
    heightUm: umFromInches(width / 2),
    dropUm: umFromInches(drop),
    measuredFrom,
    edge,
    across: acrossReading(umFromInches(across)),
  };
}

// The phrases are common practice in the trade, no source.
describe('the words of a reading', () => {
  it('says how wide, how far below the collar and that it is in the middle', () => {
    expect(readingWords(t, reading('fullFront', 10, 3, 0), 'in')).toEqual({
      size: '10 in wide',
      sizeWithHeight: '10 in wide, 5 in tall',
      drop: '3 in below the collar',
      across: 'in the middle',
    });
  });

  it('measures a chest print from the shoulder to its middle and names the side as its wearer does', () => {
    expect(readingLine(t, reading('leftChest', 3.5, 8, 4), 'in')).toBe(
      '3 1/2 in wide, 8 in down from the top of the shoulder to the middle, 4 in to wearer’s left',
    );
    expect(readingWords(t, reading('rightChest', 3.5, 8, -4), 'in').across).toBe('4 in to wearer’s right');
  });

  it('says above instead of a negative length', () => {
    expect(readingWords(t, reading('backNeck', 2.5, -0.5, 0), 'in').drop).toBe('1/2 in above the collar');
  });

  it('says the same in centimetres where the shop thinks in them', () => {
    expect(readingLine(t, reading('fullFront', 10, 3, 0), 'cm')).toBe(
      '25.4 cm wide, 7.6 cm below the collar, in the middle',
    );
  });

  it.each(LOCATION_IDS)('has a name and a whole reading for %s', (locationId) => {
    expect(t(`location.${locationId}`).toLowerCase()).toBe(t(`place.${locationId}`));
    expect(readingLine(t, reading(locationId, 4, 3, 1), 'in')).toMatch(/^4 in wide, 3 in \D+, 1 in to wearer’s left$/);
  });

  it('says the band of a size that is not an adult one', () => {
    expect(AGE_BANDS.map((ageBand) => sizeWords(t, { ageBand, label: 'M' }))).toEqual([
      'M',
      'Youth M',
      'Toddler M',
      'Infant M',
    ]);
  });

  // Labels as suppliers write them: from memory, no source.
  it.each([
    ['youth', 'YM', 'Youth M'],
    ['youth', 'Y-2XL', 'Youth 2XL'],
    ['youth', 'YS–YXL', 'Youth S–XL'],
    ['youth', 'Youth L', 'Youth L'],
    ['youth', 'Yearling', 'Youth Yearling'],
    ['youth', '10', 'Youth 10'],
    ['toddler', 'Toddler 2T', 'Toddler 2T'],
    ['infant', 'NB', 'Infant NB'],
    ['adult', 'YM', 'YM'],
  ] as const)('says the band of the %s size %s once', (ageBand, label, words) => {
    expect(sizeWords(t, { ageBand, label })).toBe(words);
  });

  it('says a chest width as it is measured on a shirt lying flat', () => {
    expect(chestWords(t, umFromInches(20.5), 'in')).toBe('20 1/2 in across the chest');
    expect(chestWords(t, umFromInches(12), 'in', 'thighWidth')).toBe('12 in across the thigh');
    expect(chestWords(t, umFromInches(15), 'in', 'panelWidth')).toBe('15 in wide');
  });
});
