import type { ReactNode } from 'react';
import { Words } from '@/components/ui/words';
import { subjectsFor } from '@/lib/messages/catalogue';
import { requireShop } from '@/lib/server/shop/read-shop';
import { requireMaker } from '../maker';

/** The subjects that parts of the bench which run in the browser speak of. */
const BENCH_SUBJECTS = [
  'art',
  'art-findings',
  'art-page',
  'blanks',
  'fonts',
  'form',
  'garment-words',
  'garments',
  'jobs',
  'people',
  'phone',
  'photographs',
  'readings',
  'revision',
  'send',
] as const;

/** The maker's side. Each page, route and action asks for the maker again: a layout alone guards nothing. */
export default async function BenchLayout({ children }: { children: ReactNode }) {
  await requireMaker();
  const { locale, timeZone } = await requireShop();
  return (
    <Words locale={locale} messages={subjectsFor(locale, BENCH_SUBJECTS)} timeZone={timeZone}>
      {children}
    </Words>
  );
}
