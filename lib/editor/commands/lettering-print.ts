import type { LayoutDocument } from '@/lib/domain/layout/document';
import { letteringOf } from '@/lib/domain/layout/print-content';
import { type FontRef, type Lettering, letteringSchema } from '@/lib/domain/lettering/lettering';
import { canEditPrint, printInHand, withPrint } from '../chosen-print';
import type { Command, TableState } from '../command';
import { canAddPrint, type NewPrint, withNewPrint } from '../new-print';

/** Sets lettering on the garment at a location, at its starting letter height and place for every size offered. */
export const addLettering: Command<NewPrint & { readonly lettering: Lettering }> = {
  id: 'addLettering',
  keys: [],
  needs: 'garment',
  otherwise: 'tooManyPrints',
  canRun: canAddPrint,
  run: (state, { lettering, ...print }) => {
    const checked = letteringSchema.safeParse(lettering);
    if (!(checked.success && hasFont(state, lettering.font))) return state.layout;
    return withNewPrint(state, { kind: 'lettering', lettering: checked.data }, print);
  },
};

/** Says or sets the lettering in hand otherwise. What it cannot be, and a font that is not open, changes nothing. */
export const changeLettering: Command<{ readonly change: Partial<Lettering> }> = {
  id: 'changeLettering',
  keys: [],
  canRun: (state) => canEditPrint(state) && letteringOf(printInHand(state).print) !== null,
  run: (state, { change }) => {
    const { print } = printInHand(state);
    const before = letteringOf(print);
    if (!before) return state.layout;
    const checked = letteringSchema.safeParse({ ...before, ...change });
    if (!checked.success || !hasFont(state, checked.data.font)) return state.layout;
    if (JSON.stringify(checked.data) === JSON.stringify(before)) return state.layout;
    return withLettering(state.layout, print.printId, checked.data);
  },
};

function withLettering(layout: LayoutDocument, printId: string, lettering: Lettering): LayoutDocument {
  return withPrint(layout, printId, (print) => ({ ...print, content: { kind: 'lettering', lettering } }));
}

/** Letters are measured in their font: without it nothing on the table could be placed. */
function hasFont({ type }: Pick<TableState, 'type'>, font: FontRef): boolean {
  return type?.has(font) ?? false;
}
