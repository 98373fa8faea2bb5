import { AsyncLocalStorage } from 'node:async_hooks';

interface Turn {
  open: boolean;
  afterwards: (() => void)[];
}

/** The one line that all writes of a process stand in. */
export interface WriteTurns {
  /** Runs `work` when everything that asked before it has ended, well or badly. */
  take<T>(work: () => Promise<T>): Promise<T>;
  /** Runs `step` once the turn under way has ended well; outside a turn, at once. */
  afterwards(step: () => void): void;
}

/**
 * A new line. Asking for a turn from inside a turn would wait for itself for ever, so it throws; use the transaction that
 * is already open.
 */
export function makeWriteTurns(): WriteTurns {
  let last: Promise<unknown> = Promise.resolve();
  const current = new AsyncLocalStorage<Turn>();

  return {
    take(work) {
      if (current.getStore()?.open) {
        throw new Error('A write was asked for inside a write: pass on the open transaction instead.');
      }
      const turn: Turn = { open: true, afterwards: [] };
      const run = last.then(async () => {
        try {
          return await current.run(turn, work);
        } finally {
          turn.open = false;
        }
      });
      last = run.catch(() => undefined);
      return run.then((result) => {
        for (const step of turn.afterwards) step();
        return result;
      });
    },
    afterwards(step) {
      const turn = current.getStore();
      if (turn?.open) turn.afterwards.push(step);
      else step();
    },
  };
}
