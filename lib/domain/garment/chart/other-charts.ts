import { type StarterChart, stepped } from './chart';

const ADULT = ['S', 'M', 'L', 'XL', '2XL', '3XL'];
const YOUTH = ['XS', 'S', 'M', 'L', 'XL'];
const INFANT = ['NB', '6M', '12M', '18M', '24M'];

/** What is not a top for grown people: common practice, from memory, no source. */
export const OTHER_CHARTS: readonly StarterChart[] = [
  {
    id: 'infant-bodysuit-infant',
    kind: 'infantBodysuit',
    ageBand: 'infant',
    sizes: stepped(
      INFANT,
      { chestWidth: 8, bodyLength: 13.5, sleeveLength: 3 },
      { chestWidth: 0.75, bodyLength: 1.25, sleeveLength: 0.25 },
    ),
  },
  {
    id: 'jogger-leg-adult',
    kind: 'joggerLeg',
    ageBand: 'adult',
    sizes: stepped(ADULT, { legLength: 39.5, thighWidth: 11.75 }, { legLength: 0.5, thighWidth: 0.75 }),
  },
  {
    id: 'jogger-leg-youth',
    kind: 'joggerLeg',
    ageBand: 'youth',
    sizes: stepped(YOUTH, { legLength: 27, thighWidth: 8.5 }, { legLength: 2.5, thighWidth: 0.625 }),
  },
  {
    id: 'cap-front-adult',
    kind: 'capFront',
    ageBand: 'adult',
    sizes: stepped(['Low', 'Mid', 'High'], { panelWidth: 7, panelHeight: 4 }, { panelHeight: 0.5 }),
  },
  {
    id: 'cap-front-youth',
    kind: 'capFront',
    ageBand: 'youth',
    sizes: stepped(['One size'], { panelWidth: 6.5, panelHeight: 3.75 }, {}),
  },
  {
    id: 'tote-adult',
    kind: 'tote',
    ageBand: 'adult',
    sizes: stepped(
      ['Small', 'Regular', 'Large'],
      { panelWidth: 13, panelHeight: 14 },
      { panelWidth: 2, panelHeight: 2 },
    ),
  },
  {
    id: 'apron-adult',
    kind: 'apron',
    ageBand: 'adult',
    sizes: stepped(['Regular', 'Long'], { panelWidth: 24, bodyLength: 30 }, { panelWidth: 4, bodyLength: 4 }),
  },
  {
    id: 'apron-youth',
    kind: 'apron',
    ageBand: 'youth',
    sizes: stepped(['S', 'M'], { panelWidth: 18, bodyLength: 21 }, { panelWidth: 2, bodyLength: 3 }),
  },
  {
    id: 'plain-panel-adult',
    kind: 'plainPanel',
    ageBand: 'adult',
    sizes: stepped(
      ['12 × 12', '18 × 18', '24 × 24'],
      { panelWidth: 12, panelHeight: 12 },
      { panelWidth: 6, panelHeight: 6 },
    ),
  },
];
