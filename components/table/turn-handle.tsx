import type { KeyboardEvent } from 'react';
import { useTranslations } from 'use-intl';
import type { Point } from '@/lib/domain/geometry/point';
import { setTurn } from '@/lib/editor/commands/change-print';
import { afterCommand } from '@/lib/editor/table-editor';
import { turnByStep } from '@/lib/editor/turning';
import { turnValue } from '@/lib/editor/typed-reading';
import styles from './print-frame.module.css';
import type { Change } from './use-reading';

type TurnHandleProps = {
  name: string;
  turnCentideg: number;
  /** Where its middle is, CSS pixels on the paper. */
  at: Point;
  change: Change;
};

/** The handle a print is turned by: dragged round, or with arrow keys a degree at a time and with Shift to each 15°. */
export function TurnHandle({ name, turnCentideg, at, change }: TurnHandleProps) {
  const t = useTranslations('table.reading');

  function onKeyDown(event: KeyboardEvent): void {
    const to = turnFor(event, turnCentideg);
    if (to === null) return;
    event.preventDefault();
    event.stopPropagation();
    change((before) => afterCommand(before, setTurn, { turnCentideg: to }, event.repeat));
  }

  return (
    <div
      role="slider"
      tabIndex={0}
      aria-label={t('turnOf', { print: name })}
      aria-valuemin={-180}
      aria-valuemax={180}
      aria-valuenow={turnCentideg / 100}
      aria-valuetext={t('degrees', { degrees: turnValue(turnCentideg) })}
      title={t('turn')}
      data-turn
      className={styles.turn}
      style={{ transform: `translate(${at.x}px, ${at.y}px)` }}
      onKeyDown={onKeyDown}
    >
      <svg viewBox="0 0 20 20" aria-hidden="true">
        <path d="M15 4.5v4.6h-4.6M14.6 8.8a6 6 0 1 0 .6 4" />
      </svg>
    </div>
  );
}

function turnFor({ key, shiftKey, altKey, ctrlKey, metaKey }: KeyboardEvent, fromCentideg: number): number | null {
  if (altKey || ctrlKey || metaKey) return null;
  const snap = shiftKey ? 'fifteens' : 'degrees';
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return turnByStep(fromCentideg, 1, snap);
    case 'ArrowLeft':
    case 'ArrowDown':
      return turnByStep(fromCentideg, -1, snap);
    case 'PageUp':
      return turnByStep(fromCentideg, 1, 'fifteens');
    case 'PageDown':
      return turnByStep(fromCentideg, -1, 'fifteens');
    case 'Home':
      return 0;
    default:
      return null;
  }
}
