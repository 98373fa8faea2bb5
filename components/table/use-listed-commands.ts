import { useTranslations } from 'use-intl';
import { chosenPrint } from '@/lib/editor/chosen-print';
import type { CommandRefusal } from '@/lib/editor/command';
import { otherGarments } from '@/lib/editor/commands/copy-side';
import { garmentsSuiting, setGarments } from '@/lib/editor/commands/cover-garments';
import { type CommandSection, editing, type TableCommand } from '@/lib/editor/table-command';
import { TABLE_COMMANDS } from '@/lib/editor/table-commands';
import { type TableEditor, tableState } from '@/lib/editor/table-editor';
import { copySideTo } from './copy-side';
import type { PageAct } from './page-acts';
import type { Perform } from './use-table-commands';

/** A command as the list of all of them shows it. */
export type ListedCommand = {
  readonly id: string;
  readonly label: string;
  readonly section: CommandSection;
  readonly keys: readonly string[];
  /** Why it cannot run now; null when it can. */
  readonly refusal: CommandRefusal | null;
  readonly run: () => void;
};

/** Everything that can be done at the table as it lies now, in words. */
export function useListedCommands(editor: TableEditor, perform: Perform, acts: readonly PageAct[]): ListedCommand[] {
  const t = useTranslations('table.command');
  const listed = (command: TableCommand, label: string): ListedCommand => ({
    id: command.id,
    label,
    section: command.section,
    keys: command.keys,
    refusal: command.refusal(editor),
    run: () => perform(command),
  });
  return [
    ...TABLE_COMMANDS.map((command) => listed(command, t(command.id))),
    ...garmentCommands(editor).map(({ command, garment }) =>
      listed(command, garment === null ? t('onAllGarments') : t('copySideTo', { garment })),
    ),
    ...acts.map(({ id, ...act }) => ({ ...act, id, label: t(id) })),
  ];
}

/** What can be done with the other garments of the job: nothing is listed where there are none. */
function garmentCommands(editor: TableEditor): { command: TableCommand; garment: string | null }[] {
  const state = tableState(editor);
  if (state.layout.garments.length < 2) return [];
  const suiting = garmentIdsSuiting(editor);
  const everywhere = editing({ id: 'onAllGarments', section: 'more', canBeIdle: true }, setGarments, ({ newId }) => ({
    garmentIds: suiting,
    newId,
  }));
  const copies = otherGarments(state).map(({ garmentId, name }) => ({ command: copySideTo(garmentId), garment: name }));
  return [{ command: everywhere, garment: null }, ...copies];
}

function garmentIdsSuiting(editor: TableEditor): string[] {
  const state = tableState(editor);
  const chosen = chosenPrint(state);
  return chosen ? garmentsSuiting(state.layout, chosen.print).map(({ garmentId }) => garmentId) : [];
}
