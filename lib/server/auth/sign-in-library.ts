import { betterAuth } from 'better-auth';
import { prismaAdapter } from 'better-auth/adapters/prisma';
import { database } from '../db/database';
import type { DatabaseProvider } from '../db/database-url';
import { newId } from '../db/new-id';
import type { AuthTables, Database } from '../db/open-database';
import { CLIENT_HEADER } from '../edge/request-headers';
import { environment } from '../env/environment';
import { secrets } from '../secrets/secrets';
import { passwordLimits } from './password-rules';

/** NIST SP 800-63B, section 4.1.3: sign in again at least once in 30 days. */
const sessionSeconds = 30 * 24 * 3600;

/**
 * The sign-in library over the given tables. Its own routes are never served: everything goes through this folder, so a
 * stranger can neither sign up nor reset. It opens no transaction; each of its writes stands alone.
 */
export function makeAuth(tables: AuthTables, provider: DatabaseProvider) {
  const { publicUrl } = environment();
  const secure = publicUrl.startsWith('https:');
  return betterAuth({
    appName: 'Yokemark',
    baseURL: publicUrl,
    basePath: '/api/auth',
    secret: secrets().authSecret,
    database: prismaAdapter(tables, { provider, transaction: false }),
    telemetry: { enabled: false },
    logger: { level: 'error' },
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      minPasswordLength: passwordLimits.min,
      maxPasswordLength: passwordLimits.max,
    },
    user: {
      additionalFields: {
        role: { type: 'string', required: true, input: false },
        ownerOf: { type: 'string', required: false, input: false, returned: false },
      },
    },
    // Looking never writes: a page view does not lengthen a session.
    session: { expiresIn: sessionSeconds, deferSessionRefresh: true, cookieCache: { enabled: false } },
    rateLimit: {
      enabled: true,
      storage: 'database',
      customRules: { '/sign-in/email': { window: 60, max: 5 } },
    },
    advanced: {
      cookiePrefix: 'yokemark',
      useSecureCookies: secure,
      defaultCookieAttributes: { httpOnly: true, sameSite: 'lax', secure, path: '/' },
      ipAddress: { ipAddressHeaders: [CLIENT_HEADER] },
      database: { generateId: newId },
    },
  });
}

export type Auth = ReturnType<typeof makeAuth>;

let known: { over: Database; auth: Auth } | undefined;

/** The sign-in library over the shop's database. */
export function auth(): Auth {
  const over = database();
  if (known?.over !== over) known = { over, auth: makeAuth(over.authTables, over.provider) };
  return known.auth;
}
