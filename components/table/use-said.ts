import { useEffect, useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import { printReading } from '@/lib/domain/layout/readings';
import { garmentOf, sizeName, sizeOf } from '@/lib/domain/layout/sizes';
import { chosenPrint } from '@/lib/editor/chosen-print';
import type { EditLabel } from '@/lib/editor/command';
import { type TableEditor, tableState } from '@/lib/editor/table-editor';
import { readingWords, sizeWords } from '@/lib/messages/reading-words';

type Words = ReturnType<typeof useWords>;

/** What is read out after each change at the table: what was done and what the tape now says. */
export function useSaid(editor: TableEditor): string {
  const words = useWords();
  const before = useRef(editor);
  const [said, setSaid] = useState('');

  useEffect(() => {
    const was = before.current;
    before.current = editor;
    if (editor.held || was === editor) return;
    const next =
      was.history.present === editor.history.present
        ? afterChoosing(was, editor, words)
        : afterEdit(was, editor, words);
    if (next !== null) setSaid(next);
  }, [editor, words]);
  return said;
}

function useWords() {
  const t = useTranslations('table');
  const readings = useTranslations('readings');
  const words = useRef({ t, readings });
  return words.current;
}

function afterEdit(was: TableEditor, is: TableEditor, words: Words): string | null {
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
  if (done.label === 'removePrint') return t('said.removed', { print: nameInHand(was) });
  const said = { print: nameInHand(is), readings: readingsInHand(is, words, partOf(done.label)) };
  return t(done.label === 'addPrint' ? 'said.added' : 'said.changed', said);
}

function afterChoosing(was: TableEditor, is: TableEditor, { t, readings }: Words): string | null {
  const { selection, history } = is;
  if (!selection || !was.selection) return null;
  if (selection.side !== was.selection.side) return t('said.side', { side: readings(`side.${selection.side}`) });
  if (selection.size === was.selection.size) return null;
  const offered = sizeOf(garmentOf(history.present, selection.garmentId), selection.size);
  return t('said.size', { size: sizeWords(readings, sizeName(offered)) });
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
};

function partOf(label: EditLabel): Part {
  return PARTS[label] ?? 'all';
}

function readingsInHand(editor: TableEditor, { readings }: Words, part: Part): string {
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
