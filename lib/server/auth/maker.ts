import type { MakerAccess, MakerAccessFields, MakerRole } from './maker-access';
import { auth } from './sign-in-library';

function roleOf(role: string): MakerRole {
  if (role === 'owner' || role === 'helper') return role;
  throw new Error(`A user has the role ${JSON.stringify(role)}.`);
}

/** The one gate for makers: who a request's session cookie belongs to. Null for none, a made-up or an ended one. */
export async function makerFromHeaders(headers: Headers): Promise<MakerAccess | null> {
  const session = await auth().api.getSession({ headers });
  if (!session) return null;
  const { id, name, email, role } = session.user;
  const access: MakerAccessFields = { userId: id, role: roleOf(role), name, email };
  return access as MakerAccess;
}
