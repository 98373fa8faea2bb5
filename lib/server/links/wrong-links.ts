import { allowAttempt, secondsUntilAllowed } from '../limits/attempts';
import { readToken } from './link-token';

/** Counts one link that did not open against the client it came from. */
export function countWrongLink(client: string, now: Date): void {
  allowAttempt('wrongLink', client, now);
}

/**
 * Seconds a client has to wait that tried too many wrong links; 0 for everybody else, and for a token this shop made, since
 * others at the same address may have been the ones who tried. Reads no database: that is what is being spared.
 */
export function secondsToWait(token: string, client: string, now: Date): number {
  const seconds = secondsUntilAllowed('wrongLink', client, now);
  return seconds > 0 && !readToken(token)?.genuine ? seconds : 0;
}
