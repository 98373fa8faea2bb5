import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { saidOf } from '@/components/table/said-words';
import { tableCommand } from '@/lib/editor/table-commands';
import { afterRedo, afterUndo, newTableEditor, type TableEditor } from '@/lib/editor/table-editor';
import { translatorFor } from '@/lib/messages/translator';
import { DOINGS, done, newId, TWO_GARMENTS } from '../editor/command-doings';
import { ADULT_M, showing, tableWith, YOUTH_M } from '../editor/sample-table';

const words = { t: translatorFor('en', 'table'), readings: translatorFor('en', 'readings') };
const said = (was: TableEditor, is: TableEditor) => saidOf(was, is, words);
const table = tableWith(['fullFront', 'leftChest', 'fullBack']);
const ran = (editor: TableEditor, id: Parameters<typeof tableCommand>[0]) => tableCommand(id).run(editor, { newId });
const saidOn = (editor: TableEditor, id: Parameters<typeof tableCommand>[0]) => said(editor, ran(editor, id));

describe('what is read out at the table', () => {
  it('is where the print lies now, or how large it is, as the tape says it', () => {
    // Common practice, no source: a full front starts 10 in wide, 3 in down; the trade's step is 1/8 in.
    expect(saidOn(table, 'nudgeDown')).toBe('fullFront: 3 1/8 in below the collar, in the middle');
    expect(saidOn(table, 'wider')).toMatch(/^fullFront: 10 1\/8 in wide, .* in tall$/);
    expect(saidOn(table, 'turnBack')).toMatch(/^fullFront: turned -15°\. 3 in below the collar/);
  });

  it('is the place in the pile, and what is hidden or pinned', () => {
    expect(saidOn(table, 'raise')).toBe('fullFront: 1 of 2 from the top.');
    expect(saidOn(table, 'pin')).toBe('fullFront pinned.');
    expect(saidOn(ran(table, 'pin'), 'pin')).toBe('fullFront can be moved again.');
    expect(saidOn(table, 'hide')).toBe('fullFront hidden on the paper.');
    expect(saidOn(ran(table, 'hide'), 'showAll')).toBe('fullFront shown again.');
  });

  it('is what is taken in hand, on which side and size', () => {
    expect(said(table, showing(table, ADULT_M, 'leftChest'))).toMatch(
      /^leftChest in hand\. 4 in wide|^leftChest in hand\./,
    );
    expect(saidOn(table, 'turnOver')).toMatch(/^Back up\. fullBack in hand\./);
    expect(said(table, showing(table, YOUTH_M, 'fullFront'))).toMatch(
      /^Youth M shown\. fullFront in hand\. 7 1\/2 in wide/,
    );
    const both = newTableEditor(TWO_GARMENTS, 'in', false);
    expect(saidOn(both, 'nextGarment')).toMatch(/^Hood on the table, front up\./i);
  });

  it('names what was undone and done again', () => {
    const wider = ran(table, 'wider');
    const back = afterUndo(wider);
    expect(said(wider, back)).toMatch(/^Undone: size\. 10 in wide/);
    expect(said(back, afterRedo(back))).toMatch(/^Redone: size\. 10 1\/8 in wide/);
  });

  it('has a sentence for every edit there is, and none for nothing', () => {
    fc.assert(
      fc.property(fc.array(DOINGS, { minLength: 1, maxLength: 5 }), (all) => {
        let was = newTableEditor(TWO_GARMENTS, 'in', false);
        for (const each of all) {
          const is = done(was, each);
          const sentence = said(was, is);
          // A missing word or value throws; a print may be called anything, braces included.
          if (is.history.present !== was.history.present) expect(sentence?.length).toBeGreaterThan(3);
          was = is;
        }
        expect(said(was, was)).toBeNull();
      }),
      { numRuns: 60 },
    );
  });
});
