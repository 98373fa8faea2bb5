import { printReading } from '@/lib/domain/layout/readings';
import { printsOn } from '@/lib/domain/layout/scene';
import { garmentOf, sameSize, sizeName, sizeOf } from '@/lib/domain/layout/sizes';
import { chosenPrint } from '@/lib/editor/chosen-print';
import type { EditLabel } from '@/lib/editor/command';
import { type TableEditor, tableState } from '@/lib/editor/table-editor';
import { turnValue } from '@/lib/editor/typed-reading';
import { type ReadingsTranslator, readingWords, sizeWords } from '@/lib/messages/reading-words';
import type { Translator } from '@/lib/messages/translator';

/** The words of the table and of readings. */
export type SaidTranslators = { readonly t: Translator<'table'>; readonly readings: ReadingsTranslator };

/** What is said of a change at the table, from how it was to how it is; null where there is nothing to say. */
export function saidOf(was: TableEditor, is: TableEditor, words: SaidTranslators): string | null {
  if (was.history.present !== is.history.present) return afterEdit(was, is, words);
  return afterAid(was, is, words) ?? afterChoosing(was, is, words);
}

function afterEdit(was: TableEditor, is: TableEditor, words: SaidTranslators): string | null {
  const { t } = words;
  const undone = is.history.future[0];
  const done = is.history.past.at(-1);
  if (undone && undone.layout === was.history.present) {
    return t('said.undone', { what: t(`edit.${undone.label}`), readings: readingsInHand(is, words, 'all') });
  }
  if (!done) return null;
  if (was.history.future[0]?.layout === is.history.present) {
    return t('said.redone', { what: t(`edit.${done.label}`), readings: readingsInHand(is, words, 'all') });
  }
  return afterDoing(done.label, was, is, words);
}

function afterDoing(label: EditLabel, was: TableEditor, is: TableEditor, words: SaidTranslators): string {
  const { t } = words;
  const print = nameInHand(is);
  switch (label) {
    case 'removePrint':
      return t('said.removed', { print: nameInHand(was) });
    case 'raisePrint':
    case 'lowerPrint':
    case 'layOnTop':
    case 'layAtBottom':
      return t('said.order', { print, ...placeInPile(is) });
    case 'setGarments':
      return t('said.garments', { print, garments: garmentsInHand(is) });
    case 'setTurn':
    case 'stepTurn':
      return t('said.turned', { print, degrees: turnInHand(is), readings: readingsInHand(is, words, 'place') });
    case 'copySide':
      return t('said.copied');
    case 'addPrint':
    case 'addLettering':
    case 'duplicatePrint':
    case 'mirrorPrint':
    case 'mirrorSleeve':
      return t('said.added', { print, readings: readingsInHand(is, words, 'all') });
    default:
      return t('said.changed', { print, readings: readingsInHand(is, words, PARTS[label] ?? 'all') });
  }
}

/** What was hidden, shown, pinned or loosened. */
function afterAid(was: TableEditor, is: TableEditor, { t }: SaidTranslators): string | null {
  const named = (printId: string | undefined) =>
    is.history.present.prints.find((each) => each.printId === printId)?.name;
  const added = (key: 'hidden' | 'pinned') => named(is[key].find((id) => !was[key].includes(id)));
  const gone = (key: 'hidden' | 'pinned') => was[key].filter((id) => !is[key].includes(id)).map(named);
  const [hidden, pinned, shown, loose] = [added('hidden'), added('pinned'), gone('hidden'), gone('pinned')];
  if (hidden !== undefined) return t('said.hidden', { print: hidden });
  if (shown.length > 1) return t('said.allShown');
  if (shown[0] !== undefined) return t('said.shown', { print: shown[0] });
  if (pinned !== undefined) return t('said.pinned', { print: pinned });
  return loose[0] === undefined ? null : t('said.loose', { print: loose[0] });
}

function afterChoosing(was: TableEditor, is: TableEditor, words: SaidTranslators): string | null {
  const { t, readings } = words;
  const { selection, history } = is;
  if (!selection || !was.selection || selection === was.selection) return null;
  const garment = garmentOf(history.present, selection.garmentId);
  const side = readings(`side.${selection.side}`);
  const said: string[] = [];
  if (selection.garmentId !== was.selection.garmentId) said.push(t('said.garment', { garment: garment.name, side }));
  else if (selection.side !== was.selection.side) said.push(t('said.side', { side }));
  if (!sameSize(selection.size, was.selection.size)) {
    said.push(t('said.size', { size: sizeWords(readings, sizeName(sizeOf(garment, selection.size))) }));
  }
  if (selection.printId !== was.selection.printId || said.length > 0) {
    const print = nameInHand(is);
    said.push(
      print === '' ? t('said.noPrint') : t('said.print', { print, readings: readingsInHand(is, words, 'all') }),
    );
  }
  return said.join(' ');
}

type Part = 'place' | 'size' | 'all';

const PARTS: Partial<Record<EditLabel, Part>> = {
  movePrint: 'place',
  nudgePrint: 'place',
  centrePrint: 'place',
  setDrop: 'place',
  setAcross: 'place',
  setWidth: 'size',
  setHeight: 'size',
  stepSize: 'size',
  setLetterHeight: 'size',
};

function readingsInHand(editor: TableEditor, { readings }: SaidTranslators, part: Part): string {
  const chosen = chosenPrint(tableState(editor));
  if (!chosen) return '';
  const words = readingWords(readings, printReading(chosen.print, chosen.group), editor.unit);
  const place = `${words.drop}, ${words.across}`;
  if (part === 'place') return place;
  return part === 'size' ? words.sizeWithHeight : `${words.sizeWithHeight}, ${place}`;
}

function nameInHand(editor: TableEditor): string {
  return chosenPrint(tableState(editor))?.print.name ?? '';
}

function turnInHand(editor: TableEditor): string {
  return turnValue(chosenPrint(tableState(editor))?.print.turnCentideg ?? 0);
}

function garmentsInHand(editor: TableEditor): string {
  const { layout } = tableState(editor);
  const ids = chosenPrint(tableState(editor))?.print.garmentIds ?? [];
  return layout.garments
    .filter(({ garmentId }) => ids.includes(garmentId))
    .map(({ name }) => name)
    .join(', ');
}

function placeInPile(editor: TableEditor): { place: number; count: number } {
  const { layout, selection } = tableState(editor);
  const pile = selection ? printsOn(layout, selection) : [];
  return { place: pile.length - pile.findIndex(({ printId }) => printId === selection?.printId), count: pile.length };
}
