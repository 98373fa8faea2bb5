import { type ClipboardEvent, type KeyboardEvent, useRef, useState } from 'react';
import { classNames } from '../ui/class-names';
import { cellKey, type Move } from './cell-key';
import styles from './roster-table.module.css';

type Typed = { readonly text: string; readonly was: string };

type RosterCellProps = {
  /** What the cell is called: `Name, line 3`. */
  label: string;
  /** Shown above the cell where a line is a card. */
  heading: string;
  text: string;
  kind: 'words' | 'characters' | 'size';
  /** open: something in it has to be settled. meant: settled as it is. */
  state: 'open' | 'meant' | null;
  describedBy: string | undefined;
  readOnly: boolean;
  longest: number;
  onCommit: (text: string, was: string) => void;
  onMove: (move: Move) => void;
  /** True when the pasted text was taken care of. */
  onPasteBlock: (text: string) => boolean;
  onUndo: (redo: boolean) => void;
};

/**
 * One cell: a field that keeps what is typed until it is left. Arrows and Enter go to its neighbours; left and right do so
 * from the ends of what stands in it, and from all of it.
 */
export function RosterCell(props: RosterCellProps) {
  const { label, heading, text, kind, state, describedBy, readOnly, longest } = props;
  // What stood there when typing began: somebody else may change it under the hand.
  const [typed, setTyped] = useState<Typed | null>(null);
  // Moving on leaves the field too, before what was typed is drawn anew: it is handed over once.
  const kept = useRef<Typed | null>(null);
  const type = (next: Typed | null) => {
    kept.current = next;
    setTyped(next);
  };
  const commit = () => {
    const written = kept.current;
    type(null);
    if (written && written.text !== written.was) props.onCommit(written.text, written.was);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    const act = event.nativeEvent.isComposing ? null : cellKey(event, event.currentTarget, typed !== null);
    if (act === null) return;
    event.preventDefault();
    if (act === 'revert') return type(null);
    if (act === 'undo' || act === 'redo') return props.onUndo(act === 'redo');
    commit();
    props.onMove(act);
  };
  const onPaste = (event: ClipboardEvent<HTMLInputElement>) => {
    const pasted = event.clipboardData.getData('text/plain');
    if (readOnly || !/[\t\n\r]/.test(pasted.replace(/[\r\n]+$/, ''))) return;
    event.preventDefault();
    if (props.onPasteBlock(pasted)) type(null);
  };
  return (
    <label className={styles.cell}>
      <span className={styles.cellHeading} aria-hidden="true">
        {heading}
      </span>
      <input
        aria-label={label}
        aria-invalid={state === 'open' || undefined}
        aria-describedby={describedBy}
        className={classNames(styles.input, styles[kind], state && styles[state])}
        value={typed?.text ?? text}
        readOnly={readOnly}
        maxLength={longest}
        dir={kind === 'words' ? 'auto' : undefined}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        onFocus={(event) => event.currentTarget.select()}
        onChange={({ target }) => type({ text: target.value, was: typed?.was ?? text })}
        onBlur={commit}
        onKeyDown={onKeyDown}
        onPaste={onPaste}
      />
    </label>
  );
}
