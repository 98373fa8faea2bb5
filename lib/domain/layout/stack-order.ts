import type { LayoutDocument, Print } from './document';

/** What a stack is looked for in. */
export type Layout = Pick<LayoutDocument, 'garments' | 'prints'>;

/** Whether one print can keep under another: both on one side of a garment, and the other not kept under it already. */
export function canKeepUnder(layout: Layout, lower: Print, upper: Print): boolean {
  return lower.side === upper.side && sharesGarment(lower, upper) && !uppersOf(layout, upper).includes(lower.printId);
}

/** Every print, the upper ones of each stack before those under them. */
export function fromTheTop(layout: Layout): string[] {
  return [...layout.prints]
    .map(({ printId }, index) => ({ printId, index, depth: depthOf(layout, printId) }))
    .sort((a, b) => a.depth - b.depth || a.index - b.index)
    .map(({ printId }) => printId);
}

function depthOf(layout: Layout, printId: string): number {
  const print = printOf(layout, printId);
  return print ? uppersOf(layout, print).length : 0;
}

/** The prints a print is under, itself first. */
function uppersOf(layout: Layout, print: Print): string[] {
  const found: string[] = [];
  let at: Print | undefined = print;
  while (at && !found.includes(at.printId)) {
    found.push(at.printId);
    at = at.below && printOf(layout, at.below.printId);
  }
  return found;
}

/** The print of this id, if the layout has it. */
export function printOf({ prints }: Pick<Layout, 'prints'>, printId: string): Print | undefined {
  return prints.find((print) => print.printId === printId);
}

function sharesGarment(a: Print, b: Print): boolean {
  return a.garmentIds.some((garmentId) => b.garmentIds.includes(garmentId));
}
