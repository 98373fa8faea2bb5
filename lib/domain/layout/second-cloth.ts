import type { GarmentKind } from '../garment/kinds';
import { STARTER_CHARTS } from '../garment/starter-charts';
import { blankFromStyle, styleOfChart } from './blank-from-style';
import { flatOf } from './scene';

const known = new Map<GarmentKind, boolean>();

/** Whether parts of a kind are of a second cloth, such as the sleeves of a raglan: as its flat has it. */
export function hasSecondCloth(kind: GarmentKind): boolean {
  const already = known.get(kind);
  if (already !== undefined) return already;
  const has = drawnWithSecond(kind);
  known.set(kind, has);
  return has;
}

function drawnWithSecond(kind: GarmentKind): boolean {
  const chart = STARTER_CHARTS.find((each) => each.kind === kind);
  if (!chart) throw new Error(`no starter chart of ${kind}`);
  const sizes = chart.sizes.slice(0, 1);
  const made = blankFromStyle(styleOfChart({ ...chart, sizes }, { name: kind, fabric: '' }), { blankId: kind });
  const [size] = made.ok ? made.blank.sizes : [];
  if (!size) throw new Error(`starter chart ${chart.id} cannot be drawn`);
  return flatOf(kind, size, 'front').parts.some(({ second }) => second === true);
}
