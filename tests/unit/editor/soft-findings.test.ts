import { describe, expect, it } from 'vitest';
import { umFromInches } from '@/lib/domain/measure/length';
import { goAheadSoft } from '@/lib/editor/commands/go-ahead-soft';
import { setWidth } from '@/lib/editor/commands/size-print';
import { paperFindings } from '@/lib/editor/paper-findings';
import { shownFlat } from '@/lib/editor/shown-flat';
import { afterCommand, shownLayout, type TableEditor } from '@/lib/editor/table-editor';
import { tableWith } from './sample-table';

/** What is said of the picture on the paper; the leaf's ink is 600 px wide. */
function saidOfPicture(editor: TableEditor, detailShare: number) {
  const shown = shownFlat({ layout: shownLayout(editor), selection: editor.selection });
  if (!(shown && editor.selection)) throw new Error('nothing on the table');
  return paperFindings(shownLayout(editor), editor.selection, shown, null, () => ({ detailShare }))
    .filter(({ of }) => of === 'art')
    .map((found) => ('sharpness' in found ? `${found.sharpness}${found.stops ? ', stops' : ''}` : ''));
}

describe('what is said of a soft picture on the paper', () => {
  // Common practice, no source: 300 px to an inch are sharp, under 200 are soft.
  it('counts real detail only', () => {
    const editor = afterCommand(tableWith(['fullFront']), setWidth, { widthUm: umFromInches(2) });
    expect(saidOfPicture(editor, 1)).toEqual([]);
    expect(saidOfPicture(editor, 0.7)).toEqual(['fair']);
    expect(saidOfPicture(editor, 0.25)).toEqual(['soft, stops']);
  });

  it('no longer stops once the maker goes ahead with it', () => {
    const soft = afterCommand(tableWith(['fullFront']), setWidth, { widthUm: umFromInches(4) });
    const ahead = afterCommand(soft, goAheadSoft, { on: true });
    expect(saidOfPicture(soft, 1)).toEqual(['soft, stops']);
    expect(saidOfPicture(ahead, 1)).toEqual(['soft']);
    expect(saidOfPicture(afterCommand(ahead, goAheadSoft, { on: false }), 1)).toEqual(['soft, stops']);
  });
});
