import { type Micrometres, UM_PER_CM, UM_PER_INCH, UM_PER_MM } from '../../measure/length';

/** From one size of a chart to the next no measure doubles (common practice, no source). */
const GAP = 2;
/** How far beyond the other sizes a length may be once it is taken in their unit: a few sizes' growth. */
const REACH = 1.25;
/** How many times too long a number is when it is taken in the longer unit of two. */
const MISTAKEN = [UM_PER_INCH / UM_PER_CM, UM_PER_CM / UM_PER_MM, UM_PER_INCH / UM_PER_MM];

/**
 * Lengths of one measure that were taken in the wrong unit: a gap parts them from the others, and in another unit they would
 * lie among them. Of the two sides the smaller is wrong, and where both are of one size the one without the first of them.
 */
export function strayLengths<Each>(lengths: ReadonlyMap<Each, Micrometres>): Each[] {
  const sorted = [...lengths].sort(([, a], [, b]) => a - b);
  const gap = sorted.findIndex(([, um], index) => index > 0 && um > (sorted[index - 1]?.[1] ?? um) * GAP);
  const [short, long] = [sorted.slice(0, Math.max(0, gap)), sorted.slice(Math.max(0, gap))];
  const [least, most] = [short[0]?.[1], short.at(-1)?.[1]];
  const [from, to] = [long[0]?.[1], long.at(-1)?.[1]];
  if (least === undefined || most === undefined || from === undefined || to === undefined) return [];
  if (!MISTAKEN.some((times) => from / times >= least / REACH && to / times <= most * REACH)) return [];
  const [first] = lengths.keys();
  const isShortRight =
    short.length === long.length ? short.some(([each]) => each === first) : short.length > long.length;
  return (isShortRight ? long : short).map(([each]) => each);
}
