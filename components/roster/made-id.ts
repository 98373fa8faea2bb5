/** An id for something that is made in the browser: random, so that two windows never make the same. */
export function madeId(): string {
  return crypto.randomUUID();
}
