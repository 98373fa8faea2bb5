import { freezeFlat } from '@/lib/domain/garment/flat';
import { completeMeasures, drawFlat, kindMeasures, sidesOf } from '@/lib/domain/garment/kinds';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import { UM_PER_MM } from '@/lib/domain/measure/length';
import { measuredAgain } from '../unit/garment/drawn-measures';
import { median, milliseconds, printResult } from './measure';

// How true the flats are: every kind, every size of its starter charts, every side. Each measure is taken again on the
// drawn paths by svg-path-properties, which had no part in drawing them. At most 0.5 mm from what was entered.

/** As many garments as a busy week's jobs show at once; each is drawn with all its sides and frozen. */
const GARMENTS = 200;
const ROUNDS = 5;

const sizes = STARTER_CHARTS.flatMap(({ id, kind, sizes: of }) =>
  of.map(({ label, entered }) => {
    const completed = completeMeasures(kind, entered);
    if (!completed.ok) throw new Error(`${id} ${label}: ${completed.refusal.reason} (${completed.refusal.measure})`);
    return { name: `${id} ${label}`, kind, measures: completed.measures };
  }),
);

let [flats, worst, worstAt] = [0, 0, ''];
for (const { name, kind, measures } of sizes) {
  const shown = new Set<string>();
  for (const side of sidesOf(kind)) {
    flats += 1;
    for (const { measure, mm } of measuredAgain(drawFlat(kind, measures, side))) {
      const entered = measures.um[measure];
      if (entered === undefined) continue;
      shown.add(measure);
      const off = Math.abs(mm - entered / UM_PER_MM);
      if (!(off <= worst)) [worst, worstAt] = [off, `${name} ${side} ${measure}`];
    }
  }
  const missed = kindMeasures(kind).filter((measure) => !shown.has(measure));
  if (missed.length > 0) throw new Error(`${name} shows no ${missed.join(', ')}`);
}

const set = Array.from({ length: GARMENTS }, (_, index) => sizes[index % sizes.length]).filter(
  (size) => size !== undefined,
);
const drawSet = milliseconds(() => {
  for (const { kind, measures } of set) for (const side of sidesOf(kind)) freezeFlat(drawFlat(kind, measures, side));
});
await drawSet();
const rounds: number[] = [];
for (let round = 0; round < ROUNDS; round += 1) rounds.push(await drawSet());

process.stderr.write(`worst: ${worstAt}\n`);
printResult('flats', { flats, worst_mm: worst, ms: median(rounds) });
