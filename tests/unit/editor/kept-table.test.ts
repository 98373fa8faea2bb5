import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layoutFault } from '@/lib/domain/layout/faults';
import { setCounts } from '@/lib/domain/layout/garment-edits';
import { setWidth } from '@/lib/editor/commands/size-print';
import { keptTable, MOST_KEPT_STEPS, restoredTable } from '@/lib/editor/kept-table';
import { saysTheSame } from '@/lib/editor/same-layout';
import {
  afterCommand,
  afterRedo,
  afterUndo,
  newTableEditor,
  type TableEditor,
  wholeLayout,
} from '@/lib/editor/table-editor';
import { withPinned } from '@/lib/editor/working-aids';
import { DOINGS, done, TWO_GARMENTS } from './command-doings';
import { ADULT_M } from './sample-table';

const newTable = () => newTableEditor(TWO_GARMENTS, 'in', false);
/** A browser's store gives back a structured clone: equal, sharing inside, and another object. */
const stored = (editor: TableEditor, version: number): unknown => structuredClone(keptTable(editor, version));

describe('a table after a reload', () => {
  it('is the one that was left, to the last edit, with everything to undo and redo', () => {
    fc.assert(
      fc.property(fc.array(DOINGS, { maxLength: 20 }), fc.nat({ max: 8 }), fc.boolean(), (all, undos, isSaved) => {
        let left = all.reduce(done, newTable());
        for (let step = 0; step < undos; step += 1) left = afterUndo(left);
        // Either all of it was saved before, or the last of it was not: the saved copy is then the one it began with.
        const draft = isSaved ? { version: 8, layout: wholeLayout(left) } : { version: 7, layout: TWO_GARMENTS };
        const back = restoredTable(stored(left, 7), draft, 'in', false);
        expect(saysTheSame(wholeLayout(back), wholeLayout(left))).toBe(true);
        expect(back.history.past.map(({ label }) => label)).toEqual(left.history.past.map(({ label }) => label));
        expect(back.selection).toEqual(left.selection);
        let [undone, expected] = [back, left];
        for (let step = 0; step < all.length; step += 1) {
          [undone, expected] = [afterUndo(undone), afterUndo(expected)];
          expect(saysTheSame(wholeLayout(undone), wholeLayout(expected))).toBe(true);
        }
        for (let step = 0; step < all.length; step += 1) undone = afterRedo(undone);
        for (let step = 0; step < all.length; step += 1) expected = afterRedo(expected);
        expect(saysTheSame(wholeLayout(undone), wholeLayout(expected))).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps the saved copy itself as its layout, so that nothing is saved again', () => {
    const left = afterCommand(newTable(), setWidth, { widthUm: 200_000 });
    const layout = structuredClone(wholeLayout(left));
    expect(wholeLayout(restoredTable(stored(left, 3), { version: 4, layout }, 'in', false))).toBe(layout);
  });

  it('lets a history go that somebody else’s save has overtaken, and keeps what is pinned', () => {
    const left = withPinned(afterCommand(newTable(), setWidth, { widthUm: 200_000 }), 'fullFront', true);
    const theirs = setCounts(TWO_GARMENTS, 'tee', [{ ...ADULT_M, quantity: 9 }]);
    const back = restoredTable(stored(left, 3), { version: 4, layout: theirs }, 'in', false);
    expect(wholeLayout(back)).toBe(theirs);
    expect(back.history.past).toEqual([]);
    expect(back.pinned).toEqual(['fullFront']);
  });

  it('takes nothing from a signed-off job’s past, nor from what cannot be read', () => {
    const left = afterCommand(newTable(), setWidth, { widthUm: 200_000 });
    const draft = { version: 3, layout: TWO_GARMENTS };
    expect(wholeLayout(restoredTable(stored(left, 3), draft, 'in', true))).toBe(TWO_GARMENTS);
    const spoiled = [
      undefined,
      null,
      'x',
      { format: 2 },
      { ...keptTable(left, 3), present: { garments: [], prints: [{}] } },
      { ...keptTable(left, 3), present: { garments: [], prints: TWO_GARMENTS.prints } },
    ];
    for (const each of spoiled) {
      const back = restoredTable(each, draft, 'in', false);
      expect(wholeLayout(back)).toBe(TWO_GARMENTS);
      expect(layoutFault(wholeLayout(back))).toBeNull();
    }
  });

  it('leaves nobody’s name and no note in the browser, and no more than a bounded number of steps', () => {
    const named = { ...TWO_GARMENTS, notes: 'Call Marit', statement: 'Placed by hand' };
    let left = newTableEditor(named, 'in', false);
    for (let step = 0; step < MOST_KEPT_STEPS + 20; step += 1)
      left = afterCommand(left, setWidth, { widthUm: 200_000 + 1_000 * step });
    const kept = keptTable(left, 1);
    expect(JSON.stringify(kept)).not.toMatch(/Marit|Placed by hand|people/);
    expect(kept.past.length).toBe(MOST_KEPT_STEPS);
    const back = restoredTable(structuredClone(kept), { version: 1, layout: named }, 'in', false);
    expect(wholeLayout(afterUndo(back)).notes).toBe('Call Marit');
  });
});
