import { expect, it } from 'vitest';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { umFromInches } from '@/lib/domain/measure/length';
import { frozenScenes } from '@/lib/domain/revision/frozen-scenes';
import { viewGarments } from '@/lib/domain/revision/view';
import { teeWithPrints } from '../layout/sample-layout';

const WHY = 'From seam to seam on purpose.';

/** A print that is kept a note of, 22 in wide on the adult sizes: wider than the smaller of them. */
function widePrint(): LayoutDocument {
  const layout = teeWithPrints(['fullFront']);
  return {
    ...layout,
    prints: layout.prints.map((print) => ({
      ...print,
      fitNote: WHY,
      sizeGroups: print.sizeGroups.map((group) =>
        group.members.some(({ blankId }) => blankId === 'crew-tee-adult')
          ? { ...group, widthUm: umFromInches(22) }
          : group,
      ),
    })),
  };
}

it('a note why a print lies over a line is shown on the sizes where it does, and on no other', () => {
  const layout = widePrint();
  const scenes = frozenScenes(layout, 'in', () => ({ d: 'M0 0Z', widthMm: 10 }));
  const [tee] = viewGarments(layout, scenes);
  const prints = (tee?.sizes ?? []).flatMap(({ sides }) => sides.flatMap((side) => side.prints));
  const said = prints.map(({ fit, fitNote }) => ({ stops: (fit?.stops ?? []).length > 0, fitNote }));
  expect(said).toEqual(said.map(({ stops }) => ({ stops, fitNote: stops ? WHY : undefined })));
  expect(new Set(said.map(({ stops }) => stops))).toEqual(new Set([true, false]));
});
