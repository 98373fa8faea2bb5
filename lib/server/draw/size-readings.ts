import type { AgeBand } from '@/lib/domain/garment/kinds';
import type { PrintReading } from '@/lib/domain/layout/readings';
import type { ViewGarment, ViewSide } from '@/lib/domain/revision/view';

/** What the tape reads of one print on one side, with the sizes it reads so on. */
export type PrintReadings = {
  readonly printId: string;
  readonly name: string;
  readonly readings: readonly {
    readonly reading: PrintReading;
    readonly sizes: readonly { readonly ageBand: AgeBand; readonly label: string }[];
  }[];
};

/** The prints of a side in the order they are painted, sizes that read the same taken together. */
export function readingsBySize(garment: Pick<ViewGarment, 'sizes'>, side: ViewSide['side']): PrintReadings[] {
  const prints = new Map<
    string,
    { name: string; readings: Map<string, { reading: PrintReading; sizes: ViewGarment['sizes'] }> }
  >();
  for (const size of garment.sizes) {
    for (const print of size.sides.find((each) => each.side === side)?.prints ?? []) {
      const known = prints.get(print.printId) ?? { name: print.name, readings: new Map() };
      prints.set(print.printId, known);
      const key = JSON.stringify(print.reading);
      const same = known.readings.get(key) ?? { reading: print.reading, sizes: [] };
      known.readings.set(key, same);
      same.sizes.push(size);
    }
  }
  return [...prints].map(([printId, { name, readings }]) => ({ printId, name, readings: [...readings.values()] }));
}
