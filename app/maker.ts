import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { readShop } from '@/lib/server/shop/read-shop';

/** The signed-in maker this request comes from. Everybody else is led to signing in, or to setting up a new shop. */
export async function requireMaker(): Promise<MakerAccess> {
  const maker = await makerFromHeaders(await headers());
  if (maker) return maker;
  redirect((await readShop()) ? '/sign-in' : '/set-up');
}
