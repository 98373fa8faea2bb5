// A page puts a message into the outbox and the server around it sends it; each has its own copy of this module, so they
// meet on the process.
const slot = Symbol.for('yokemark.mail-nudge');
const holder = globalThis as { [slot]?: () => void };

/** Tells the mail loop of this process, if one runs, that there is something to send. */
export function nudgeMail(): void {
  holder[slot]?.();
}

/** Sets what a nudge does; undefined for nothing. */
export function onMailNudge(wake: (() => void) | undefined): void {
  holder[slot] = wake;
}
