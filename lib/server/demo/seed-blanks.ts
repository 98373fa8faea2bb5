import type { BlankStyle } from '@/lib/domain/garment/blank-style';
import { starterChart, USUAL_CUT_TOLERANCE } from '@/lib/domain/garment/starter-charts';
import type { MakerAccess } from '../auth/maker-access';
import { addBlank } from '../blanks/add-blank';
import { loadBlank } from '../blanks/load-blank';
import { setOnHand } from '../blanks/set-on-hand';
import { DEMO_BLANKS, DEMO_CLOTH } from './demo-words';

/** Puts the demo's blanks on the list, on their starter charts, with invented costs and some of each on the shelf. */
export async function seedBlanks(maker: MakerAccess): Promise<void> {
  for (const blank of DEMO_BLANKS) {
    const added = await addBlank(maker, styleOf(blank));
    if (!added.ok) throw new Error(`demo blank ${blank.name}: ${JSON.stringify(added.faults)}`);
    await countShelf(maker, added.blankId, blank.onHand);
  }
}

function styleOf({ chartId, name, fabric, costMinor, dearerFrom }: (typeof DEMO_BLANKS)[number]): BlankStyle {
  const chart = starterChart(chartId);
  if (!chart) throw new Error(`no starter chart ${chartId}`);
  const { kind, ageBand, sizes } = chart;
  const dearer = dearerFrom === null ? sizes.length : sizes.findIndex(({ label }) => label === dearerFrom);
  return {
    name,
    kind,
    ageBand,
    fabric,
    supplierNote: '',
    chartSource: 'starter',
    cutToleranceUm: { ...USUAL_CUT_TOLERANCE },
    sizes: sizes.map(({ id, label, entered }, index) => ({
      sizeId: id,
      label,
      entered,
      costMinor: costMinor + (index < dearer ? 0 : 200),
    })),
    colours: Object.entries(DEMO_CLOTH).map(([colourId, cloth]) => ({ colourId, ...cloth })),
  };
}

/** `onHand` names a colour, and of it how many of each size. */
async function countShelf(
  maker: MakerAccess,
  blankId: string,
  onHand: Readonly<Record<string, Readonly<Record<string, number>>>>,
): Promise<void> {
  const blank = await loadBlank(maker, blankId);
  if (!blank) throw new Error(`demo blank ${blankId} is gone`);
  const { sizes, colours } = blank.style;
  const counts = colours.flatMap(({ colourId, name }) =>
    sizes.map(({ sizeId, label }) => ({ sizeId, colourId, seen: 0, quantity: onHand[name]?.[label] ?? 0 })),
  );
  const counted = await setOnHand(maker, blankId, counts);
  if (!counted.ok) throw new Error(`demo blank ${blankId}: ${counted.reason}`);
}
