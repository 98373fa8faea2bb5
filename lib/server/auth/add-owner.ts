import { database } from '../db/database';
import type { Transaction } from '../db/open-database';
import { auth, makeAuth } from './sign-in-library';

/** A password as it may be stored. Slow on purpose, so it is made before a transaction opens. */
export async function hashPassword(password: string): Promise<string> {
  return (await auth().$context).password.hash(password);
}

/**
 * Makes the owner of a shop inside the transaction that makes the shop, through the sign-in library itself: either both
 * are there or neither. The database has room for one owner.
 */
export async function addOwner(
  tx: Transaction,
  owner: { shopId: string; name: string; email: string; passwordHash: string },
): Promise<{ userId: string }> {
  const { internalAdapter } = await makeAuth(tx, database().provider).$context;
  const user = await internalAdapter.createUser(
    { name: owner.name, email: owner.email, emailVerified: false, role: 'owner', ownerOf: owner.shopId },
    { method: 'set-up' },
  );
  await internalAdapter.linkAccount({
    userId: user.id,
    accountId: user.id,
    providerId: 'credential',
    password: owner.passwordHash,
  });
  return { userId: user.id };
}
