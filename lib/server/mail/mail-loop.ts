import { deliverDue } from './deliver';
import type { MailLoaders } from './mail-data';
import { onMailNudge } from './nudge';

/** How often the outbox is looked at when nobody nudges, in ms: for second tries, and for what another process put in. */
const lookEveryMs = 20_000;

/**
 * Sends what is in the outbox for as long as the server runs: at once when something is put in, and on the clock. Answers
 * with how to stop it; stopping waits for the message that is being sent.
 */
export function startMailLoop(loaders: MailLoaders): () => Promise<void> {
  let stopped = false;
  let timer: NodeJS.Timeout | undefined;
  let round: Promise<void> | undefined;
  let again = false;

  async function deliver(): Promise<void> {
    do {
      again = false;
      try {
        await deliverDue(loaders, new Date());
      } catch (error) {
        console.error('The outbox could not be worked off; it is tried again.', error);
      }
    } while (again && !stopped);
  }

  function wake(): void {
    if (stopped) return;
    clearTimeout(timer);
    if (round) {
      again = true;
      return;
    }
    round = deliver().finally(() => {
      round = undefined;
      if (stopped) return;
      timer = setTimeout(wake, lookEveryMs);
      timer.unref();
    });
  }

  onMailNudge(wake);
  wake();
  return async () => {
    stopped = true;
    clearTimeout(timer);
    onMailNudge(undefined);
    await round;
  };
}
