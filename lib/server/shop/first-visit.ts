import { secrets, secretsExist } from '../secrets/secrets';
import { makeSetUpCode } from '../secrets/set-up-code';
import { readShop } from './read-shop';

/**
 * What the terminal has to say when the server starts. `setUp`: no shop yet, and the one-time code that opens it, new at
 * each start. `secretsLost`: there is a shop but its secrets were gone, so every link that was sent is dead and everybody
 * must sign in again; new ones are made. Makes the secrets in any case.
 */
export async function prepareFirstVisit(): Promise<
  { state: 'open' } | { state: 'setUp'; code: string } | { state: 'secretsLost' }
> {
  const hadSecrets = secretsExist();
  secrets();
  const shop = await readShop();
  if (!shop) return { state: 'setUp', code: makeSetUpCode() };
  return hadSecrets ? { state: 'open' } : { state: 'secretsLost' };
}
