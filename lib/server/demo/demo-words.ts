import type { Shop } from '../shop/read-shop';

/**
 * The demo, all invented: Otterbank Press makes the Saltmarsh Rowing Club's autumn relay shirts. Addresses are under
 * example.org (RFC 2606), the number from a range kept for fiction (555-0100 to 555-0199, North American numbering).
 */
export const DEMO = {
  customer: { name: 'Saltmarsh Rowing Club', email: 'wren@saltmarsh-rowing.example.org', phone: '+1 555 0142' },
  relay: {
    title: 'Autumn relay shirts',
    notes: 'Race day is the Saturday. Wren collects on the Friday from four.',
    firstNote: 'Hello Wren, here is the heron on the navy tees. Please check the counts against your crew list.',
    changeWords: 'Could the bird be a touch bigger? And a little higher, please.',
    secondNote: 'The heron is an inch wider and half an inch higher on every size.',
    signer: 'Wren Okafor',
  },
  coxes: {
    title: 'Coxes’ practice tees',
    notes: 'Four tees for the coxes, small crest only.',
    note: 'Small crest on the left chest, as you asked.',
    signer: 'Wren Okafor',
  },
  layoutNotes: 'Wash inside out, no dryer for the first day.',
} as const;

/** Days from the first start until each demo job is needed. */
export const DEMO_DAYS = { relay: 9, coxes: 5 } as const;

/** Cloths of the demo's tees. */
export const DEMO_CLOTH = {
  navy: { name: 'Navy', hex: '#20344F', heather: false },
  sand: { name: 'Sand', hex: '#E4D8BF', heather: false },
} as const;

/** Blanks on the demo's list. Costs are invented, minor units; sizes from `dearerFrom` up cost more. */
export const DEMO_BLANKS = [
  {
    chartId: 'crew-tee-youth',
    name: 'Heavy tee, youth',
    fabric: 'Cotton',
    costMinor: 310,
    dearerFrom: null,
    onHand: { Navy: { S: 4, M: 6, L: 2 }, Sand: { M: 3 } },
  },
  {
    chartId: 'crew-tee-adult',
    name: 'Heavy tee',
    fabric: 'Cotton',
    costMinor: 380,
    dearerFrom: '2XL',
    onHand: { Navy: { S: 3, M: 8, L: 5, XL: 2 }, Sand: { M: 1, '2XL': 1 } },
  },
  {
    chartId: 'pullover-hood-adult',
    name: 'Boathouse hood',
    fabric: 'Cotton and polyester blend',
    costMinor: 1_240,
    dearerFrom: '2XL',
    onHand: { Navy: { M: 2, L: 2 } },
  },
] as const;

/** The shop whose name the demo is sealed in: it is loaded before the maker's own shop is set up. */
export const DEMO_SHOP: Shop = {
  id: 'otterbank-press',
  name: 'Otterbank Press',
  unit: 'in',
  timeZone: 'America/New_York',
  currency: 'USD',
  locale: 'en',
  statement: '',
  replyEmail: null,
  replyPhone: null,
};
