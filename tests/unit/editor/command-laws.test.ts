import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LayoutDocument, layoutDocumentSchema, type SizeKey } from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import { LOCATION_IDS } from '@/lib/domain/layout/locations';
import { keyOf, offeredSizes } from '@/lib/domain/layout/sizes';
import type { Command, CommandId } from '@/lib/editor/command';
import { addPrint } from '@/lib/editor/commands/add-print';
import { removePrint, renamePrint, setLocation, setTurn } from '@/lib/editor/commands/change-print';
import { centrePrint, movePrint, nudgePrint, setAcross, setDrop } from '@/lib/editor/commands/place-print';
import { resizePrint, setHeight, setWidth } from '@/lib/editor/commands/size-print';
import { FRAME_CORNERS } from '@/lib/editor/print-frame';
import {
  afterCommand,
  afterDrag,
  afterRedo,
  afterUndo,
  newTableEditor,
  shownLayout,
  type TableEditor,
  tableState,
  whileDragging,
  withLock,
} from '@/lib/editor/table-editor';
import { LEAF, teeWithPrints } from '../layout/sample-layout';
import { frozenLayout, showing } from './sample-table';

const start = frozenLayout(teeWithPrints(['fullFront', 'leftChest', 'fullBack']));
const sizes = start.garments.flatMap(offeredSizes).map(keyOf);

/** One thing a maker does: which command, with what, on which size and print, and whether as a drag. */
type Doing = {
  readonly id: CommandId;
  readonly size: SizeKey;
  readonly print: number;
  readonly drag: boolean;
  readonly run: (editor: TableEditor, drag: boolean) => TableEditor;
};

function doing<Arguments>(command: Command<Arguments>, args: fc.Arbitrary<Arguments>): fc.Arbitrary<Doing> {
  return fc
    .record({ size: fc.constantFrom(...sizes), print: fc.nat({ max: 5 }), drag: fc.boolean(), args })
    .map(({ args: given, ...rest }) => ({
      ...rest,
      id: command.id,
      run: (editor: TableEditor, drag: boolean) =>
        drag ? afterDrag(whileDragging(editor, command, given), command.id) : afterCommand(editor, command, given),
    }));
}

let nextId = 0;
const newId = () => {
  nextId += 1;
  return `new-${nextId}`;
};
/** Any number a pointer or a slipped finger could come up with, the impossible ones included. */
const anyMm = fc.oneof(fc.double({ min: -3_000, max: 3_000 }), fc.double());
const anyUm = fc.oneof(fc.integer({ min: -2_000_000, max: 2_000_000 }), fc.double());
const snap = fc.constantFrom(null, { stepUm: 3_175, centreCatchUm: 5_000 }, { stepUm: 2_000, centreCatchUm: 0 });

const doings: fc.Arbitrary<Doing> = fc.oneof(
  doing(
    addPrint,
    fc.record({
      printId: fc.constant(null).map(newId),
      name: fc.string(),
      art: fc.constant(LEAF),
      locationId: fc.constantFrom(...LOCATION_IDS),
      newId: fc.constant(newId),
    }),
  ),
  doing(removePrint, fc.constant(undefined)),
  doing(renamePrint, fc.record({ name: fc.string({ unit: 'binary', maxLength: 100 }) })),
  doing(setLocation, fc.record({ locationId: fc.constantFrom(...LOCATION_IDS), newId: fc.constant(newId) })),
  doing(setTurn, fc.record({ turnCentideg: fc.oneof(fc.integer(), fc.double()) })),
  doing(movePrint, fc.record({ byXMm: anyMm, byYMm: anyMm, snap })),
  doing(
    nudgePrint,
    fc.record({ direction: fc.constantFrom('up' as const, 'down', 'left', 'right'), stride: fc.boolean() }),
  ),
  doing(
    resizePrint,
    fc.record({ corner: fc.constantFrom(...FRAME_CORNERS), toMm: fc.record({ x: anyMm, y: anyMm }), snap }),
  ),
  doing(setWidth, fc.record({ widthUm: anyUm })),
  doing(setHeight, fc.record({ heightUm: anyUm })),
  doing(setDrop, fc.record({ dropUm: anyUm })),
  doing(setAcross, fc.record({ acrossUm: anyUm })),
  doing(centrePrint, fc.constant(undefined)),
);

function done(editor: TableEditor, { size, print, drag, run }: Doing): TableEditor {
  const { prints } = tableState(editor).layout;
  return run(showing(editor, size, prints[print % Math.max(1, prints.length)]?.printId ?? null), drag);
}

/** A layout that could be saved and sent: the schema takes it, and every size of a printed garment is in exactly one group. */
function expectWhole(layout: LayoutDocument): void {
  expect(layoutDocumentSchema.safeParse(layout).error).toBeUndefined();
  expect(layoutFault(layout)).toBeNull();
  for (const { sizeGroups } of layout.prints) {
    for (const { widthUm, dropUm, acrossUm } of sizeGroups) {
      expect([widthUm, dropUm, acrossUm].every(Number.isSafeInteger)).toBe(true);
      expect([dropUm, acrossUm].some((um) => Object.is(um, -0))).toBe(false);
    }
  }
}

type Model = { past: LayoutDocument[]; future: LayoutDocument[] };
type Real = { editor: TableEditor };

class Do implements fc.Command<Model, Real> {
  readonly doing: Doing;
  constructor(doing: Doing) {
    this.doing = doing;
  }
  check = () => true;
  run(model: Model, real: Real): void {
    const before = real.editor.history.present;
    real.editor = done(real.editor, this.doing);
    const after = shownLayout(real.editor);
    expectWhole(after);
    if (after === before) return;
    model.past.push(before);
    model.future = [];
  }
  toString = () => `${this.doing.drag ? 'drag ' : ''}${this.doing.id}`;
}

class Undo implements fc.Command<Model, Real> {
  check = () => true;
  run(model: Model, real: Real): void {
    const before = real.editor.history.present;
    const expected = model.past.pop();
    real.editor = afterUndo(real.editor);
    if (expected) model.future.push(before);
    expect(shownLayout(real.editor)).toBe(expected ?? before);
  }
  toString = () => 'undo';
}

class Redo implements fc.Command<Model, Real> {
  check = () => true;
  run(model: Model, real: Real): void {
    const before = real.editor.history.present;
    const expected = model.future.pop();
    real.editor = afterRedo(real.editor);
    if (expected) model.past.push(before);
    expect(shownLayout(real.editor)).toBe(expected ?? before);
  }
  toString = () => 'redo';
}

const newTable = () => newTableEditor(start, 'in', false);

describe('working at the table', () => {
  it('goes back and forth through exactly what was done, every layout on the way a whole one', () => {
    const steps = [doings.map((each) => new Do(each)), fc.constant(new Undo()), fc.constant(new Redo())];
    fc.assert(
      fc.property(fc.commands(steps, { maxCommands: 40 }), (commands) => {
        fc.modelRun(() => ({ model: { past: [], future: [] }, real: { editor: newTable() } }), commands);
      }),
      { numRuns: 300 },
    );
  });

  it('ends where it began when everything is undone, and where it ended when everything is redone', () => {
    fc.assert(
      fc.property(fc.array(doings, { maxLength: 25 }), (all) => {
        const end = all.reduce(done, newTable());
        let back = end;
        for (let step = 0; step < all.length; step += 1) back = afterUndo(back);
        expect(shownLayout(back)).toBe(start);
        let forth = back;
        for (let step = 0; step < all.length; step += 1) forth = afterRedo(forth);
        expect(shownLayout(forth)).toBe(shownLayout(end));
      }),
    );
  });

  it('never writes to the layout it was given', () => {
    fc.assert(
      fc.property(fc.array(doings, { minLength: 1, maxLength: 6 }), (all) => {
        // Every layout on the way is frozen through and through, so a write would throw.
        const end = all.reduce((editor, each) => done(frozenTable(editor), each), newTable());
        expectWhole(shownLayout(end));
      }),
    );
  });

  it('changes nothing on a signed-off layout, forth or back', () => {
    fc.assert(
      fc.property(fc.array(doings, { minLength: 1, maxLength: 8 }), doings, (all, more) => {
        const locked = withLock(all.reduce(done, newTable()), true);
        expect(shownLayout(done(locked, more))).toBe(shownLayout(locked));
        expect(afterUndo(locked)).toBe(locked);
        expect(afterRedo(locked)).toBe(locked);
      }),
    );
  });

  it('keeps something that exists on the table', () => {
    fc.assert(
      fc.property(fc.array(doings, { maxLength: 25 }), (all) => {
        const { selection, layout } = tableState(all.reduce(done, newTable()));
        const print = layout.prints.find(({ printId }) => printId === selection?.printId);
        expect(selection?.garmentId).toBe('tee');
        expect(sizes).toContainEqual(selection?.size);
        expect(print?.printId ?? null).toBe(selection?.printId);
        if (print) expect(print.side).toBe(selection?.side);
      }),
    );
  });
});

function frozenTable(editor: TableEditor): TableEditor {
  return { ...editor, history: { ...editor.history, present: frozenLayout(editor.history.present) } };
}
