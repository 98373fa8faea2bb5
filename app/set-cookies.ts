import { cookies } from 'next/headers';
import type { CookieToSet } from '@/lib/server/auth/sign-in';

/** Hands cookies to the browser with the answer to this request. */
export async function setCookies(toSet: readonly CookieToSet[]): Promise<void> {
  const store = await cookies();
  for (const { name, value, options } of toSet) store.set(name, value, options);
}
