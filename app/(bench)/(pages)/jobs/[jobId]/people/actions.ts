'use server';

import { refresh } from 'next/cache';
import { requireMaker } from '@/app/maker';
import { takeListCounts } from '@/lib/server/people/take-list-counts';

/** Lets what the list comes to stand as what is ordered of a garment. */
export async function takeCountsAction(jobId: string, garmentId: string): Promise<void> {
  const maker = await requireMaker();
  await takeListCounts(maker, jobId, garmentId);
  refresh();
}
