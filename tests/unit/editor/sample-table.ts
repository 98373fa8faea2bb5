import type { ArtRef } from '@/lib/domain/art/art-ref';
import type { LayoutDocument, SizeGroup, SizeKey } from '@/lib/domain/layout/document';
import type { LocationId } from '@/lib/domain/layout/locations';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { printInHand } from '@/lib/editor/chosen-print';
import { selectGarment, selectPrint, selectSize } from '@/lib/editor/selection';
import { newTableEditor, type TableEditor, tableState, withSelection } from '@/lib/editor/table-editor';
import { LEAF, teeWithPrints } from '../layout/sample-layout';

export const ADULT_M: SizeKey = { blankId: 'crew-tee-adult', sizeId: 'M' };
export const YOUTH_M: SizeKey = { blankId: 'crew-tee-youth', sizeId: 'M' };

/** A table with a tee in youth and adult sizes, the print at the first location in hand, an adult M shown. */
export function tableWith(
  locationIds: readonly LocationId[],
  unit: LengthUnit = 'in',
  art: ArtRef = LEAF,
): TableEditor {
  return showing(newTableEditor(teeWithPrints(locationIds, art), unit, false), ADULT_M, locationIds[0] ?? null);
}

/** The same table with another size shown and another print in hand; another garment too where one is named. */
export function showing(editor: TableEditor, size: SizeKey, printId: string | null, garmentId?: string): TableEditor {
  return withSelection(editor, (layout, selection) => {
    const garment = garmentId === undefined ? selection : selectGarment(layout, selection, garmentId);
    return selectPrint(layout, selectSize(layout, garment, size), printId);
  });
}

/** The readings of the print in hand on the size shown. */
export function readingsOf(editor: TableEditor): Pick<SizeGroup, 'widthUm' | 'dropUm' | 'acrossUm'> {
  const { widthUm, dropUm, acrossUm } = printInHand(tableState(editor)).group;
  return { widthUm, dropUm, acrossUm };
}

/** A deep copy, frozen all the way down: writing to any part of it throws. */
export function frozenLayout(layout: LayoutDocument): LayoutDocument {
  return deepFrozen(structuredClone(layout));
}

function deepFrozen<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null) {
    for (const part of Object.values(value)) deepFrozen(part);
    Object.freeze(value);
  }
  return value;
}
