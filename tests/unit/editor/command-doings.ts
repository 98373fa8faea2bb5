import fc from 'fast-check';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import type { LayoutDocument, SizeKey } from '@/lib/domain/layout/document';
import { addGarment, blankFromChart } from '@/lib/domain/layout/garment-edits';
import { LOCATION_IDS } from '@/lib/domain/layout/locations';
import { keyOf, offeredSizes } from '@/lib/domain/layout/sizes';
import type { Command } from '@/lib/editor/command';
import { addPrint } from '@/lib/editor/commands/add-print';
import { removePrint, renamePrint, setLocation, setTurn } from '@/lib/editor/commands/change-print';
import { copySide } from '@/lib/editor/commands/copy-side';
import { setGarments } from '@/lib/editor/commands/cover-garments';
import { duplicatePrint } from '@/lib/editor/commands/duplicate-print';
import { goAheadSoft } from '@/lib/editor/commands/go-ahead-soft';
import { oneWidth, suggestGroups } from '@/lib/editor/commands/group-sizes';
import { keepUnder, letGoOfPrint } from '@/lib/editor/commands/keep-under';
import { mirrorPrint, mirrorSleeve } from '@/lib/editor/commands/mirror-print';
import { layAtBottom, layOnTop, lowerPrint, raisePrint } from '@/lib/editor/commands/order-print';
import { centrePrint, movePrint, nudgePrint, setAcross, setDrop } from '@/lib/editor/commands/place-print';
import { resizePrint, setHeight, setWidth } from '@/lib/editor/commands/size-print';
import { stepSize, stepTurn } from '@/lib/editor/commands/step-print';
import { FRAME_CORNERS } from '@/lib/editor/print-frame';
import { afterCommand, afterDrag, type TableEditor, tableState, whileDragging } from '@/lib/editor/table-editor';
import { LEAF, teeWithPrints } from '../layout/sample-layout';
import { frozenLayout, showing } from './sample-table';

/** A job of two garments, a tee with prints on three sides and a bare hood, so that prints can be on one, the other or both. */
export const TWO_GARMENTS: LayoutDocument = frozenLayout(
  addGarment(teeWithPrints(['fullFront', 'leftChest', 'fullBack', 'leftSleeve']), hood()),
);
export const ALL_SIZES: readonly SizeKey[] = TWO_GARMENTS.garments.flatMap(offeredSizes).map(keyOf);

function hood() {
  const chart = starterChart('pullover-hood-adult');
  if (!chart) throw new Error('no hood chart');
  const cloth = { name: 'Ash', hex: '#B9B7B0', heather: true };
  const blanks = [blankFromChart(chart, 'hood-adult', 'Hood', 'Cotton')];
  return { garmentId: 'hood', name: 'Hood', cloth, blanks, counts: [] };
}

let nextId = 0;
/** A name nothing had before. */
export const newId = () => {
  nextId += 1;
  return `new-${nextId}`;
};

/** One thing a maker does: which command, with what, on which size and print, and whether as a drag. */
export type Doing = {
  readonly id: string;
  readonly size: SizeKey;
  readonly print: number;
  readonly drag: boolean;
  readonly run: (editor: TableEditor, drag: boolean) => TableEditor;
};

/** What comes of it, on the size and the print it is meant for. */
export function done(editor: TableEditor, { size, print, drag, run }: Doing): TableEditor {
  const { prints, garments } = tableState(editor).layout;
  const garment = garments.find(({ blanks }) => blanks.some(({ blankId }) => blankId === size.blankId));
  const there = prints.filter(({ garmentIds }) => garmentIds.includes(garment?.garmentId ?? ''));
  const printId = there[print % Math.max(1, there.length)]?.printId ?? null;
  return run(showing(editor, size, printId, garment?.garmentId), drag);
}

function doing<Arguments>(command: Command<Arguments>, args: fc.Arbitrary<Arguments>): fc.Arbitrary<Doing> {
  return fc
    .record({ size: fc.constantFrom(...ALL_SIZES), print: fc.nat({ max: 7 }), drag: fc.boolean(), args })
    .map(({ args: given, ...rest }) => ({
      ...rest,
      id: command.id,
      run: (editor: TableEditor, drag: boolean) =>
        drag ? afterDrag(whileDragging(editor, command, given), command.id) : afterCommand(editor, command, given),
    }));
}

/** Any number a pointer or a slipped finger could come up with, the impossible ones included. */
const anyMm = fc.oneof(fc.double({ min: -3_000, max: 3_000 }), fc.double());
const anyUm = fc.oneof(fc.integer({ min: -2_000_000, max: 2_000_000 }), fc.double());
const snap = fc.constantFrom(null, { stepUm: 3_175, catchUm: 5_000 }, { stepUm: 2_000, catchUm: 0 });
const nothing = fc.constant(undefined);
const makes = fc.constant({ newId });
const anyLocation = fc.constantFrom(...LOCATION_IDS);

const PLACING = [
  doing(movePrint, fc.record({ byXMm: anyMm, byYMm: anyMm, snap })),
  doing(
    nudgePrint,
    fc.record({ direction: fc.constantFrom('up' as const, 'down', 'left', 'right'), stride: fc.boolean() }),
  ),
  doing(setDrop, fc.record({ dropUm: anyUm })),
  doing(setAcross, fc.record({ acrossUm: anyUm })),
  doing(centrePrint, nothing),
  doing(setLocation, fc.record({ locationId: anyLocation, newId: fc.constant(newId) })),
];

const SIZING = [
  doing(
    resizePrint,
    fc.record({ corner: fc.constantFrom(...FRAME_CORNERS), toMm: fc.record({ x: anyMm, y: anyMm }), snap }),
  ),
  doing(setWidth, fc.record({ widthUm: anyUm })),
  doing(setHeight, fc.record({ heightUm: anyUm })),
  doing(stepSize, fc.record({ towards: fc.constantFrom('wider' as const, 'narrower') })),
  doing(setTurn, fc.record({ turnCentideg: fc.oneof(fc.integer(), fc.double()) })),
  doing(goAheadSoft, fc.record({ on: fc.boolean() })),
  doing(stepTurn, fc.record({ towards: fc.constantFrom('clockwise' as const, 'back') })),
];

const PILING = [
  ...[raisePrint, lowerPrint, layOnTop, layAtBottom, removePrint].map((command) => doing(command, nothing)),
  ...[duplicatePrint, mirrorPrint, mirrorSleeve].map((command) => doing(command, makes)),
  doing(copySide, fc.record({ garmentId: fc.constantFrom('tee', 'hood', 'gone'), newId: fc.constant(newId) })),
  doing(setGarments, fc.record({ garmentIds: fc.subarray(['tee', 'hood', 'gone']), newId: fc.constant(newId) })),
  doing(renamePrint, fc.record({ name: fc.string({ unit: 'binary', maxLength: 100 }) })),
  doing(
    addPrint,
    fc.record({
      printId: fc.constant(null).map(newId),
      name: fc.string(),
      art: fc.constant(LEAF),
      locationId: anyLocation,
      newId: fc.constant(newId),
    }),
  ),
];

const KEEPING = [
  doing(suggestGroups, makes),
  ...[oneWidth, keepUnder, letGoOfPrint].map((command) => doing(command, nothing)),
];

/** Anything a maker can do to the layout. */
export const DOINGS: fc.Arbitrary<Doing> = fc.oneof(...PLACING, ...SIZING, ...PILING, ...KEEPING);
