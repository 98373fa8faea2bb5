import { notFound } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { loadRevision, type RevisionView } from '@/lib/server/revisions/load-revision';
import { requireShop, type Shop } from '@/lib/server/shop/read-shop';

export type RevisionPageParams = { params: Promise<{ jobId: string; number: string }> };

/** The revision an address names, for whoever is signed in; the page for what is not there otherwise. */
export async function revisionOfPage({ params }: RevisionPageParams): Promise<{ shop: Shop; view: RevisionView }> {
  const maker = await requireMaker();
  const { jobId, number } = await params;
  const view = /^[1-9]\d{0,5}$/.test(number) ? await loadRevision(maker, jobId, Number(number)) : null;
  if (!view) notFound();
  return { shop: await requireShop(), view };
}
