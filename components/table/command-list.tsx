import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import { matchesTyped } from '@/lib/editor/matching-words';
import { COMMAND_SECTIONS } from '@/lib/editor/table-command';
import type { TableEditor } from '@/lib/editor/table-editor';
import { classNames } from '../ui/class-names';
import styles from './command-list.module.css';
import { useKeyWords } from './key-words';
import type { PageAct } from './page-acts';
import { type ListedCommand, useListedCommands } from './use-listed-commands';
import type { Perform } from './use-table-commands';

type CommandListProps = {
  editor: TableEditor;
  perform: Perform;
  acts: readonly PageAct[];
  onClose: () => void;
};

/**
 * Everything that can be done here, each with its key: narrowed down by typing, run with Enter or a press. What cannot be
 * done now says why. Escape puts the sheet away, and the focus goes back to where it was.
 */
export function CommandList({ editor, perform, acts, onClose }: CommandListProps) {
  const t = useTranslations('table.list');
  const dialog = useRef<HTMLDialogElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const id = useId();
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const found = useFound(useListedCommands(editor, perform, acts), typed);
  const chosen = found[Math.min(at, found.length - 1)];

  useEffect(() => {
    const before = document.activeElement;
    dialog.current?.showModal();
    field.current?.focus();
    return () => {
      if (before instanceof HTMLElement) before.focus({ preventScroll: true });
    };
  }, []);
  useEffect(() => {
    if (chosen) document.getElementById(`${id}-${chosen.id}`)?.scrollIntoView({ block: 'nearest' });
  }, [chosen, id]);

  function run(command: ListedCommand): void {
    if (command.refusal) return;
    onClose();
    command.run();
  }

  function onKeyDown(event: KeyboardEvent): void {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step !== undefined && found.length > 0) {
      event.preventDefault();
      setAt((Math.min(at, found.length - 1) + step + found.length) % found.length);
    } else if (event.key === 'Enter' && chosen) {
      event.preventDefault();
      run(chosen);
    }
    // What is typed here is no key of the table.
    event.stopPropagation();
  }

  return (
    <dialog
      ref={dialog}
      className={styles.sheet}
      aria-labelledby={`${id}-title`}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onKeyDown={onKeyDown}
      onClick={({ target, currentTarget }) => target === currentTarget && onClose()}
    >
      <div className={styles.head}>
        <h2 id={`${id}-title`}>{t('title')}</h2>
        <button type="button" className={styles.close} aria-label={t('close')} onClick={onClose}>
          <svg viewBox="0 0 20 20" aria-hidden="true">
            <path d="m4 4 12 12M16 4 4 16" />
          </svg>
        </button>
        <input
          ref={field}
          className={styles.typed}
          role="combobox"
          aria-expanded="true"
          aria-controls={`${id}-found`}
          aria-activedescendant={chosen && `${id}-${chosen.id}`}
          aria-label={t('find')}
          placeholder={t('find')}
          value={typed}
          autoComplete="off"
          spellCheck={false}
          onChange={({ currentTarget: { value } }) => {
            setTyped(value);
            setAt(0);
          }}
        />
      </div>
      <div id={`${id}-found`} role="listbox" aria-label={t('title')} className={styles.found}>
        <Sections {...{ found, chosen, id }} onRun={run} />
      </div>
      <p role="status" className={found.length > 0 ? 'visually-hidden' : styles.none}>
        {t('count', { count: found.length })}
      </p>
    </dialog>
  );
}

/** The commands that match, section by section, best first only in the order they are listed. */
function useFound(commands: readonly ListedCommand[], typed: string): ListedCommand[] {
  const t = useTranslations('table.list.section');
  return COMMAND_SECTIONS.flatMap((section) =>
    commands.filter((command) => command.section === section && matchesTyped(`${command.label} ${t(section)}`, typed)),
  );
}

type SectionsProps = {
  found: readonly ListedCommand[];
  chosen: ListedCommand | undefined;
  id: string;
  onRun: (command: ListedCommand) => void;
};

function Sections({ found, chosen, id, onRun }: SectionsProps) {
  const t = useTranslations('table.list.section');
  return COMMAND_SECTIONS.map((section) => {
    const commands = found.filter((command) => command.section === section);
    if (commands.length === 0) return null;
    return (
      <div key={section} role="group" aria-label={t(section)} className={styles.section}>
        <p className={styles.heading} aria-hidden="true">
          {t(section)}
        </p>
        {commands.map((command) => (
          <Row
            key={command.id}
            command={command}
            id={`${id}-${command.id}`}
            isChosen={command === chosen}
            onRun={onRun}
          />
        ))}
      </div>
    );
  });
}

type RowProps = { command: ListedCommand; id: string; isChosen: boolean; onRun: (command: ListedCommand) => void };

function Row({ command, id, isChosen, onRun }: RowProps) {
  const cannot = useTranslations('table.cannot');
  const keyWords = useKeyWords();
  const { label, keys, refusal } = command;
  const [stroke] = keys;
  return (
    <div
      id={id}
      role="option"
      aria-selected={isChosen}
      aria-disabled={refusal !== null}
      className={classNames(styles.row, isChosen && styles.chosen)}
      // The field keeps the focus, so that typing goes on.
      onMouseDown={(event) => event.preventDefault()}
      onClick={() => onRun(command)}
    >
      <span className={styles.label}>{label}</span>
      {stroke === undefined ? null : (
        <span className={styles.keys}>
          {keyWords(stroke).map((key) => (
            <kbd key={key}>{key}</kbd>
          ))}
        </span>
      )}
      {refusal ? <span className={styles.refusal}>{cannot(refusal)}</span> : null}
    </div>
  );
}
