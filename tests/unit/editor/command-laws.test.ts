import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LayoutDocument, layoutDocumentSchema } from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import {
  afterRedo,
  afterUndo,
  newTableEditor,
  shownLayout,
  type TableEditor,
  tableState,
  withLock,
} from '@/lib/editor/table-editor';
import { ALL_SIZES, DOINGS, type Doing, done, TWO_GARMENTS } from './command-doings';
import { frozenLayout } from './sample-table';

const start = TWO_GARMENTS;

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
    const steps = [DOINGS.map((each) => new Do(each)), fc.constant(new Undo()), fc.constant(new Redo())];
    fc.assert(
      fc.property(fc.commands(steps, { maxCommands: 40 }), (commands) => {
        fc.modelRun(() => ({ model: { past: [], future: [] }, real: { editor: newTable() } }), commands);
      }),
      { numRuns: 300 },
    );
  });

  it('ends where it began when everything is undone, and where it ended when everything is redone', () => {
    fc.assert(
      fc.property(fc.array(DOINGS, { maxLength: 25 }), (all) => {
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
      fc.property(fc.array(DOINGS, { minLength: 1, maxLength: 6 }), (all) => {
        // Every layout on the way is frozen through and through, so a write would throw.
        const end = all.reduce((editor, each) => done(frozenTable(editor), each), newTable());
        expectWhole(shownLayout(end));
      }),
    );
  });

  it('changes nothing on a signed-off layout, forth or back', () => {
    fc.assert(
      fc.property(fc.array(DOINGS, { minLength: 1, maxLength: 8 }), DOINGS, (all, more) => {
        const locked = withLock(all.reduce(done, newTable()), true);
        expect(shownLayout(done(locked, more))).toBe(shownLayout(locked));
        expect(afterUndo(locked)).toBe(locked);
        expect(afterRedo(locked)).toBe(locked);
      }),
    );
  });

  it('keeps something that exists on the table', () => {
    fc.assert(
      fc.property(fc.array(DOINGS, { maxLength: 25 }), (all) => {
        const { selection, layout } = tableState(all.reduce(done, newTable()));
        const print = layout.prints.find(({ printId }) => printId === selection?.printId);
        expect(layout.garments.map(({ garmentId }) => garmentId)).toContain(selection?.garmentId);
        expect(ALL_SIZES).toContainEqual(selection?.size);
        expect(print?.printId ?? null).toBe(selection?.printId);
        if (print) expect(print.side).toBe(selection?.side);
        if (print) expect(print.garmentIds).toContain(selection?.garmentId);
      }),
    );
  });
});

function frozenTable(editor: TableEditor): TableEditor {
  return { ...editor, history: { ...editor.history, present: frozenLayout(editor.history.present) } };
}
