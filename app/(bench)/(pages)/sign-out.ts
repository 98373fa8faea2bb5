'use server';

import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { setCookies } from '@/app/set-cookies';
import { signOut } from '@/lib/server/auth/sign-in';

/** Ends the maker's session here and on the server. */
export async function signOutAction(): Promise<void> {
  await setCookies(await signOut(await headers()));
  redirect('/sign-in');
}
