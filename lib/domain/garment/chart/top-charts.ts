import { type StarterChart, stepped } from './chart';

const ADULT = ['S', 'M', 'L', 'XL', '2XL', '3XL', '4XL', '5XL'];
const YOUTH = ['XS', 'S', 'M', 'L', 'XL'];
const TODDLER = ['2T', '3T', '4T', '5T'];

/** Chest, length and sleeve in inches. */
function top(chestWidth: number, bodyLength: number, sleeveLength: number) {
  return { chestWidth, bodyLength, sleeveLength };
}

/** Tees and other tops: common practice, no source. */
export const TOP_CHARTS: readonly StarterChart[] = [
  { id: 'crew-tee-adult', kind: 'crewTee', ageBand: 'adult', sizes: stepped(ADULT, top(18, 28, 8), top(2, 1, 0.25)) },
  {
    id: 'crew-tee-youth',
    kind: 'crewTee',
    ageBand: 'youth',
    sizes: stepped(YOUTH, top(16, 20.5, 6), top(1, 1.5, 0.375)),
  },
  {
    id: 'crew-tee-toddler',
    kind: 'crewTee',
    ageBand: 'toddler',
    sizes: stepped(TODDLER, top(12, 15.5, 4.75), top(1, 1, 0.25)),
  },
  {
    id: 'v-neck-tee-adult',
    kind: 'vNeckTee',
    ageBand: 'adult',
    sizes: stepped(ADULT.slice(0, 6), top(18, 28, 8), top(2, 1, 0.25)),
  },
  {
    id: 'long-sleeve-tee-adult',
    kind: 'longSleeveTee',
    ageBand: 'adult',
    sizes: stepped(ADULT, top(18, 28, 24), top(2, 1, 0.5)),
  },
  {
    id: 'long-sleeve-tee-youth',
    kind: 'longSleeveTee',
    ageBand: 'youth',
    sizes: stepped(YOUTH, top(16, 20.5, 16.5), top(1, 1.5, 1.25)),
  },
  {
    id: 'raglan-adult',
    kind: 'raglan',
    ageBand: 'adult',
    sizes: stepped(ADULT.slice(0, 6), top(18, 28, 21.5), top(2, 1, 0.75)),
  },
  { id: 'raglan-youth', kind: 'raglan', ageBand: 'youth', sizes: stepped(YOUTH, top(16, 20.5, 15), top(1, 1.5, 1)) },
  {
    id: 'tank-adult',
    kind: 'tank',
    ageBand: 'adult',
    sizes: stepped(ADULT.slice(0, 6), { chestWidth: 18, bodyLength: 28 }, { chestWidth: 2, bodyLength: 1 }),
  },
  {
    id: 'fitted-tee-adult',
    kind: 'fittedTee',
    ageBand: 'adult',
    sizes: stepped(ADULT.slice(0, 6), top(18, 25, 6.5), top(2, 1, 0.25)),
  },
  {
    id: 'crew-sweatshirt-adult',
    kind: 'crewSweatshirt',
    ageBand: 'adult',
    sizes: stepped(ADULT, top(20, 27, 24.5), top(2, 1, 0.5)),
  },
  {
    id: 'crew-sweatshirt-youth',
    kind: 'crewSweatshirt',
    ageBand: 'youth',
    sizes: stepped(YOUTH, top(16, 19.5, 16.5), top(1, 1.5, 1.25)),
  },
  {
    id: 'pullover-hood-adult',
    kind: 'pulloverHood',
    ageBand: 'adult',
    sizes: stepped(ADULT, top(19.5, 27, 24.5), top(2, 1, 0.5)),
  },
  {
    id: 'pullover-hood-youth',
    kind: 'pulloverHood',
    ageBand: 'youth',
    sizes: stepped(YOUTH, top(16, 19.5, 16.5), top(1, 1.5, 1.25)),
  },
  {
    id: 'zip-hood-adult',
    kind: 'zipHood',
    ageBand: 'adult',
    sizes: stepped(ADULT, top(19.5, 27, 24.5), top(2, 1, 0.5)),
  },
  {
    id: 'zip-hood-youth',
    kind: 'zipHood',
    ageBand: 'youth',
    sizes: stepped(YOUTH, top(16, 19.5, 16.5), top(1, 1.5, 1.25)),
  },
  {
    id: 'polo-adult',
    kind: 'polo',
    ageBand: 'adult',
    sizes: stepped(ADULT.slice(0, 7), top(18, 28, 8.25), top(2, 1, 0.25)),
  },
  { id: 'polo-youth', kind: 'polo', ageBand: 'youth', sizes: stepped(YOUTH, top(16, 20.5, 6.25), top(1, 1.5, 0.375)) },
];
