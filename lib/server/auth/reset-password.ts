import { reader } from '../db/database';
import { forgetAttempts } from '../limits/attempts';
import { type PasswordFault, passwordFault } from './password-rules';
import { auth } from './sign-in-library';

export type PasswordReset = { ok: true } | { ok: false; reason: PasswordFault | 'noSuchMaker' };

/** Gives a maker a new password and ends every session of theirs, everywhere. */
export async function resetPassword(email: string, newPassword: string): Promise<PasswordReset> {
  const context = await auth().$context;
  const found = await context.internalAdapter.findUserByEmail(email.trim().toLowerCase(), { includeAccounts: true });
  if (!found) return { ok: false, reason: 'noSuchMaker' };
  const { user, accounts } = found;
  const shop = await reader().shop.findFirst({ select: { name: true } });
  const fault = await passwordFault(newPassword, [user.name, user.email, shop?.name ?? '']);
  if (fault) return { ok: false, reason: fault };

  const password = await context.password.hash(newPassword);
  if (accounts.some(({ providerId }) => providerId === 'credential')) {
    await context.internalAdapter.updatePassword(user.id, password);
  } else {
    await context.internalAdapter.linkAccount({
      userId: user.id,
      accountId: user.id,
      providerId: 'credential',
      password,
    });
  }
  await context.internalAdapter.deleteUserSessions(user.id);
  forgetAttempts('signInAccount', user.email);
  return { ok: true };
}
