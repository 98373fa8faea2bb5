import type { ReactNode } from 'react';
import { BenchHeader } from '@/components/bench/bench-header';
import { BenchPage } from '@/components/bench/bench-page';
import { translatorFor } from '@/lib/messages/translator';
import { requireShop } from '@/lib/server/shop/read-shop';
import { signOutAction } from './sign-out';

/** The bench's pages under their common header. The layout table, which needs the whole window, stands outside. */
export default async function BenchPagesLayout({ children }: { children: ReactNode }) {
  const shop = await requireShop();
  const t = translatorFor(shop.locale, 'bench');
  const words = {
    skip: t('skip'),
    navigation: t('navigation'),
    jobs: t('jobs'),
    blanks: t('blanks'),
    fonts: t('fonts'),
    newJob: t('newJob'),
    signOut: t('signOut'),
  };
  return (
    <>
      <BenchHeader shopName={shop.name} words={words} signOut={signOutAction} />
      <BenchPage>{children}</BenchPage>
    </>
  );
}
