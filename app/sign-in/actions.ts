'use server';

import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import { type FormState, refused } from '@/components/ui/form-state';
import { signIn } from '@/lib/server/auth/sign-in';
import { readForm } from '../read-form';
import { setCookies } from '../set-cookies';

const SECONDS_A_MINUTE = 60;

const signInSchema = z.object({
  email: z.string().trim().min(1, 'required').max(254),
  password: z.string().min(1, 'required').max(1_000),
});

/** Signs a maker in and leads to the bench. */
export async function signInAction(_before: FormState, sent: FormData): Promise<FormState> {
  const form = readForm(signInSchema, sent);
  if (!form.ok) return form.state;
  const result = await signIn(form.value, await headers());
  if (!result.ok) {
    const wait = result.reason === 'tooMany' ? result.waitSeconds : 0;
    return refused(form.typed, result.reason, { minutes: Math.max(1, Math.ceil(wait / SECONDS_A_MINUTE)) });
  }
  await setCookies(result.cookies);
  redirect('/jobs');
}
