'use server';

import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { type FormState, mistaken, refused } from '@/components/ui/form-state';
import { signIn } from '@/lib/server/auth/sign-in';
import { CLIENT_HEADER } from '@/lib/server/edge/request-headers';
import { openShop } from '@/lib/server/shop/open-shop';
import { typedIn } from '../read-form';
import { setCookies } from '../set-cookies';

/** Opens the shop with its owner, who is then signed in. */
export async function setUpAction(_before: FormState, sent: FormData): Promise<FormState> {
  const typed = typedIn(sent);
  const password = String(sent.get('password') ?? '');
  const field = (name: string) => typed[name] ?? '';
  const asking = await headers();
  const opened = await openShop(
    {
      code: field('code'),
      name: field('name'),
      unit: field('unit') as 'in' | 'cm',
      timeZone: field('timeZone'),
      currency: field('currency'),
      phone: field('phone'),
      ownerName: field('ownerName'),
      email: field('email'),
      password,
    },
    asking.get(CLIENT_HEADER) ?? '',
  );
  if (!opened.ok)
    return opened.reason === 'mistakes' ? mistaken(typed, opened.mistakes) : refused(typed, opened.reason);
  const signedIn = await signIn({ email: field('email'), password }, asking);
  if (!signedIn.ok) redirect('/sign-in');
  await setCookies(signedIn.cookies);
  redirect('/jobs');
}
