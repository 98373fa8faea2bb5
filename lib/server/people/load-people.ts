import { garmentsOnOffer, letteredColumns } from '@/lib/domain/layout/with-people';
import type { GarmentOnOffer, PeopleList } from '@/lib/domain/people/list';
import { sizeSaid } from '@/lib/messages/size-said';
import type { MakerAccess } from '../auth/maker-access';
import { reader } from '../db/database';
import { readStoredLayout } from '../drafts/stored-layout';
import { jobProgress, listKeyOf, progressRows } from '../jobs/job-standing';
import { requireShop } from '../shop/read-shop';
import { listOf } from './list-rows';

/** A job's list as the bench shows it, with what people of it can get. */
export type PeopleView = {
  readonly jobId: string;
  readonly title: string;
  readonly customerName: string;
  readonly list: PeopleList;
  readonly garments: readonly GarmentOnOffer[];
  readonly letteredColumnIds: readonly string[];
  readonly locked: boolean;
  readonly thisYear: number;
};

/** A job's list of people; null when there is no such job. */
export async function loadPeople(_maker: MakerAccess, jobId: string): Promise<PeopleView | null> {
  const [shop, job] = await Promise.all([
    requireShop(),
    reader().job.findUnique({
      where: { id: jobId },
      include: { customer: { select: { name: true } }, ...progressRows },
    }),
  ]);
  if (!job?.draft) return null;
  const list = await listOf(reader(), listKeyOf(job), 'keep');
  const { layout, locked } = jobProgress(job, list);
  return {
    jobId,
    title: job.title,
    customerName: job.customer.name,
    list,
    // Counts of the working copy are the list's own by now: what it is held against is what was counted by hand.
    garments: garmentsOnOffer(readStoredLayout(job.draft.json), sizeSaid(shop.locale)),
    letteredColumnIds: letteredColumns(layout),
    locked,
    thisYear: new Date().getFullYear(),
  };
}
