import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setCounts } from '@/lib/domain/layout/garment-edits';
import { removePrint, renamePrint, setLocation, setTurn } from '@/lib/editor/commands/change-print';
import { setGarments } from '@/lib/editor/commands/cover-garments';
import { goAheadSoft } from '@/lib/editor/commands/go-ahead-soft';
import { layOnTop } from '@/lib/editor/commands/order-print';
import { setDrop } from '@/lib/editor/commands/place-print';
import { layoutDifferences, sideThatDiffers } from '@/lib/editor/layout-differences';
import { saysTheSame } from '@/lib/editor/same-layout';
import { afterCommand, newTableEditor, type TableEditor, wholeLayout } from '@/lib/editor/table-editor';
import { DOINGS, done, newId, TWO_GARMENTS } from './command-doings';
import { ADULT_M, showing } from './sample-table';

const newTable = () => showing(newTableEditor(TWO_GARMENTS, 'in', false), ADULT_M, 'fullFront');
const kinds = (theirs: TableEditor) => layoutDifferences(TWO_GARMENTS, wholeLayout(theirs)).map(({ kind }) => kind);

describe('in what two copies of a layout differ', () => {
  it('is nothing exactly where they say the same', () => {
    fc.assert(
      fc.property(fc.array(DOINGS, { maxLength: 8 }), (all) => {
        const theirs = wholeLayout(all.reduce(done, newTable()));
        const differences = layoutDifferences(TWO_GARMENTS, theirs);
        if (differences.length === 0) expect(readTheSame(theirs)).toBe(true);
        else expect(saysTheSame(theirs, TWO_GARMENTS)).toBe(false);
        expect(layoutDifferences(theirs, structuredClone(theirs))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('names each kind of change', () => {
    const table = newTable();
    expect(kinds(afterCommand(table, removePrint, undefined))).toEqual(['onlyMine']);
    expect(kinds(afterCommand(table, renamePrint, { name: 'Crest' }))).toEqual(['renamed']);
    expect(kinds(afterCommand(table, setTurn, { turnCentideg: 1_500 }))).toEqual(['turned']);
    expect(kinds(afterCommand(table, setLocation, { locationId: 'centreChest', newId }))).toEqual(['moved']);
    expect(kinds(afterCommand(table, setGarments, { garmentIds: ['tee', 'hood'], newId }))).toEqual(['otherGarments']);
    expect(kinds(afterCommand(table, goAheadSoft, { on: true }))).toEqual(['goesAheadSoft']);
    expect(kinds(afterCommand(table, layOnTop, undefined))).toEqual(['order']);
    const counted = setCounts(TWO_GARMENTS, 'tee', [{ ...ADULT_M, quantity: 9 }]);
    expect(layoutDifferences(TWO_GARMENTS, counted)).toEqual([{ kind: 'garments' }]);
    expect(layoutDifferences(TWO_GARMENTS, { ...TWO_GARMENTS, notes: 'x' })).toEqual([{ kind: 'rest' }]);
    expect(layoutDifferences({ ...TWO_GARMENTS, prints: [] }, TWO_GARMENTS).map(({ kind }) => kind)).toEqual(
      TWO_GARMENTS.prints.map(() => 'onlyTheirs'),
    );
  });

  it('says a reading for just the sizes it changed on, both ways', () => {
    const [difference, ...others] = layoutDifferences(
      TWO_GARMENTS,
      wholeLayout(afterCommand(newTable(), setDrop, { dropUm: 100_000 })),
    );
    expect(others).toEqual([]);
    expect(difference).toMatchObject({ kind: 'reads', mine: { dropUm: 76_200 }, theirs: { dropUm: 100_000 } });
    const sizes = difference?.kind === 'reads' ? difference.sizes : [];
    expect(new Set(sizes.map(({ blankId }) => blankId))).toEqual(new Set(['crew-tee-adult']));
  });
});

describe('the side shown for two copies', () => {
  it('is the one that is up where they differ on it, otherwise where they do', () => {
    const theirs = wholeLayout(afterCommand(newTable(), setTurn, { turnCentideg: 1_500 }));
    const differences = layoutDifferences(TWO_GARMENTS, theirs);
    expect(sideThatDiffers(differences, { garmentId: 'tee', side: 'front' }).side).toBe('front');
    expect(sideThatDiffers(differences, { garmentId: 'tee', side: 'back' }).side).toBe('front');
    expect(sideThatDiffers(differences, { garmentId: 'hood', side: 'front' }).garmentId).toBe('tee');
  });
});

/** Which group a size is in is nobody's business where every size reads the same. */
function readTheSame(theirs: typeof TWO_GARMENTS): boolean {
  const plain = (layout: typeof TWO_GARMENTS) => ({
    ...layout,
    prints: layout.prints.map((print) => ({ ...print, sizeGroups: [] })),
  });
  return saysTheSame(plain(theirs), plain(TWO_GARMENTS));
}
