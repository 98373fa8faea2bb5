import { expect, it } from 'vitest';
import { lineWords } from '@/components/proof/line-words';
import { clothWords, colourWords } from '@/lib/messages/cloth-words';
import { translatorFor } from '@/lib/messages/translator';

const t = translatorFor('en', 'readings');
const white = { name: 'White', hex: '#FFFFFF', heather: false };
const inTwo = { ...white, secondName: 'Navy', secondHex: '#20344F' };

it('a cloth is said with its second one, and with its yarn to those who pick it', () => {
  expect(colourWords(t, white)).toBe('White');
  expect(colourWords(t, inTwo)).toBe('White with Navy sleeves and collar');
  expect(clothWords(t, { ...white, name: 'Grey', heather: true })).toBe('Grey, heather');
  expect(colourWords(t, { ...white, name: 'Grey' })).toBe('Grey');
});

it('the picture of a line is told with both cloths', () => {
  const sides = [{ side: 'front' as const, sceneSha256: 'a', prints: [] }];
  const size = { blankId: 'adult', sizeId: 'M', ageBand: 'adult' as const, label: 'M', quantity: 1, chestUm: 1, sides };
  const about = { garmentId: 'raglan', name: 'Raglan', fabric: '', total: 1, widthPx: 1, heightPx: 1 };
  const words = lineWords({ ...about, cloth: inTwo, sizes: [size] }, 'en');
  expect(words?.pictures[0]?.alt).toMatch(/^Front of the Raglan in White with Navy sleeves and collar, /);
});
