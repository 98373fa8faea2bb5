import { parseSetCookieHeader } from 'better-auth/cookies';
import { write } from '../db/database';
import { CLIENT_HEADER } from '../edge/request-headers';
import { environment } from '../env/environment';
import { allowAttempt, forgetAttempts, secondsUntilAllowed } from '../limits/attempts';
import { auth } from './sign-in-library';

/** A cookie for the browser, as Next's `cookies().set(name, value, options)` takes it. */
export interface CookieToSet {
  readonly name: string;
  readonly value: string;
  readonly options: {
    readonly httpOnly: boolean;
    readonly secure: boolean;
    readonly sameSite: 'lax';
    readonly path: string;
    readonly maxAge: number;
  };
}

export type SignIn =
  | { ok: true; cookies: CookieToSet[] }
  | { ok: false; reason: 'wrong' }
  | { ok: false; reason: 'tooMany'; waitSeconds: number };

function cookiesOf(response: Response): CookieToSet[] {
  return response.headers.getSetCookie().flatMap((header) =>
    [...parseSetCookieHeader(header)].map(([name, { value, secure, 'max-age': maxAge }]) => ({
      name,
      value: decodeURIComponent(value),
      options: { httpOnly: true, secure: secure === true, sameSite: 'lax' as const, path: '/', maxAge: maxAge ?? 0 },
    })),
  );
}

/** Asks the library through its own request handler: only there does it count tries. */
function ask(path: string, headers: Headers, body: object): Promise<Response> {
  const { publicUrl } = environment();
  const passedOn = new Headers({ 'content-type': 'application/json', origin: publicUrl });
  for (const name of [CLIENT_HEADER, 'user-agent', 'cookie']) {
    const value = headers.get(name);
    if (value !== null) passedOn.set(name, value);
  }
  const url = new URL(`/api/auth${path}`, publicUrl);
  return auth().handler(new Request(url, { method: 'POST', headers: passedOn, body: JSON.stringify(body) }));
}

/**
 * Signs a maker in: the cookies to set, or why not. `headers` are the request's; the edge has put the client's address in
 * them. Five tries a minute a client, kept in the database, and a hundred wrong ones a day an account.
 */
export async function signIn(input: { email: string; password: string }, headers: Headers): Promise<SignIn> {
  const email = input.email.trim().toLowerCase();
  const now = new Date();
  const wait = secondsUntilAllowed('signInAccount', email, now);
  if (wait > 0) return { ok: false, reason: 'tooMany', waitSeconds: wait };

  const withoutSession = new Headers(headers);
  withoutSession.delete('cookie');
  const response = await ask('/sign-in/email', withoutSession, { email, password: input.password });
  if (response.ok) {
    forgetAttempts('signInAccount', email);
    await write((tx) => tx.session.deleteMany({ where: { expiresAt: { lt: now } } }));
    return { ok: true, cookies: cookiesOf(response) };
  }
  if (response.status === 429) {
    const waitSeconds = Number(response.headers.get('x-retry-after') ?? 60);
    return { ok: false, reason: 'tooMany', waitSeconds };
  }
  if (response.status >= 500) throw new Error(`Signing in failed with status ${response.status}.`);
  allowAttempt('signInAccount', email, now);
  return { ok: false, reason: 'wrong' };
}

/** Ends the session of a request on the server, and answers with the cookies that take it out of the browser. */
export async function signOut(headers: Headers): Promise<CookieToSet[]> {
  const response = await ask('/sign-out', headers, {});
  if (!response.ok) throw new Error(`Signing out failed with status ${response.status}.`);
  return cookiesOf(response);
}
