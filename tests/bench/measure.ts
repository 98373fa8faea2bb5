/** One measurement: a rate or a time, the same for subject and floor. */
export type Measurement = () => Promise<number>;

export type RatioOptions = {
  /** Pairs that are measured, an odd number so that one is the median. */
  rounds: number;
  /** Pairs that are run before and thrown away. */
  warmUps?: number;
};

export type Ratios = { ratio: number; ratios: number[]; subject: number; floor: number };

/** The middle value; of an even number the mean of the two in the middle. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const [low, high] = [sorted[Math.floor((sorted.length - 1) / 2)], sorted[Math.floor(sorted.length / 2)]];
  if (low === undefined || high === undefined) throw new Error('the median of nothing');
  return (low + high) / 2;
}

/**
 * Measures a subject against a floor on a machine whose speed drifts: the two take turns, and which goes first changes
 * from round to round. Answers with the median of the rounds' ratios, and the medians of both for the curious.
 */
export async function medianOfRatios(
  subject: Measurement,
  floor: Measurement,
  { rounds, warmUps = 1 }: RatioOptions,
): Promise<Ratios> {
  const pairs: { subject: number; floor: number }[] = [];
  for (let round = -warmUps; round < rounds; round += 1) {
    const subjectFirst = round % 2 === 0;
    const first = await (subjectFirst ? subject : floor)();
    const second = await (subjectFirst ? floor : subject)();
    const pair = subjectFirst ? { subject: first, floor: second } : { subject: second, floor: first };
    if (!(pair.subject > 0 && pair.floor > 0)) throw new Error(`not a measurement: ${JSON.stringify(pair)}`);
    if (round >= 0) pairs.push(pair);
  }
  const ratios = pairs.map((pair) => pair.subject / pair.floor);
  return {
    ratio: median(ratios),
    ratios,
    subject: median(pairs.map((pair) => pair.subject)),
    floor: median(pairs.map((pair) => pair.floor)),
  };
}

/** A measurement of how long a piece of work takes, in ms. */
export function milliseconds(work: () => unknown | Promise<unknown>): Measurement {
  return async () => {
    const began = performance.now();
    await work();
    return performance.now() - began;
  };
}

type Value = number | string | Readonly<Record<string, number>>;

/** Ends a bench with its one line of JSON. Numbers are kept to four significant digits. */
export function printResult(bench: string, values: Record<string, Value>): void {
  const rounded = (_key: string, value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(4)) : value);
  process.stdout.write(`${JSON.stringify({ bench, ...values }, rounded)}\n`);
}
