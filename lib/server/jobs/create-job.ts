import { emptyLayout } from '@/lib/domain/layout/document';
import type { MakerAccess } from '../auth/maker-access';
import { write } from '../db/database';
import { newId } from '../db/new-id';
import { searchText } from '../db/search-text';
import { appendRecord } from '../record/append';
import { requireShop, type Shop } from '../shop/read-shop';
import { statementOf } from '../shop/statement';
import { instantOf, type NewJob } from './new-job';

/** Makes a job with its customer, the one contact who signs, and an empty working copy; in the name of this shop, or of the one given. */
export async function createJob(maker: MakerAccess, input: NewJob, inNameOf?: Shop): Promise<{ jobId: string }> {
  const shop = inNameOf ?? (await requireShop());
  const now = new Date();
  const jobId = newId();
  const address = { name: input.customerName, email: input.customerEmail, phone: input.customerPhone };
  await write(async (tx) => {
    const customer = await tx.customer.create({ data: { id: newId(), ...address, createdAt: now } });
    await tx.job.create({
      data: {
        id: jobId,
        customerId: customer.id,
        title: input.title,
        occasion: '',
        notes: input.notes,
        neededByLocal: input.neededBy,
        timeZone: shop.timeZone,
        neededAt: instantOf(input.neededBy, shop.timeZone),
        recordSeq: 0,
        recordHead: '',
        searchText: searchText(input.title, input.customerName),
        createdAt: now,
      },
    });
    await tx.contact.create({
      data: {
        id: newId(),
        jobId,
        ...address,
        maySign: true,
        mayRemark: true,
        mayCorrect: false,
        mayCollect: false,
        mustSign: true,
        createdAt: now,
      },
    });
    await tx.draft.create({
      data: { jobId, format: 1, json: JSON.stringify(emptyLayout(statementOf(shop))), version: 1, updatedAt: now },
    });
    await appendRecord(tx, jobId, 'jobMade', { by: maker.userId, title: input.title }, now);
  });
  return { jobId };
}

/** Changes what a job is called, when it is needed, and whom it is for. */
export async function editJob(
  maker: MakerAccess,
  jobId: string,
  input: NewJob,
): Promise<{ ok: true } | { ok: false; reason: 'noJob' }> {
  const now = new Date();
  return write(async (tx) => {
    const touched = await tx.job.updateMany({ where: { id: jobId }, data: { title: input.title, notes: input.notes } });
    if (touched.count === 0) return { ok: false, reason: 'noJob' };
    const job = await tx.job.findUniqueOrThrow({
      where: { id: jobId },
      include: { contacts: { orderBy: { createdAt: 'asc' }, take: 1 } },
    });
    const address = { name: input.customerName, email: input.customerEmail, phone: input.customerPhone };
    await appendRecord(tx, jobId, 'jobEdited', { by: maker.userId, title: input.title, neededBy: input.neededBy }, now);
    await tx.job.update({
      where: { id: jobId },
      data: {
        title: input.title,
        notes: input.notes,
        neededByLocal: input.neededBy,
        neededAt: instantOf(input.neededBy, job.timeZone),
        searchText: searchText(input.title, input.customerName),
      },
    });
    await tx.customer.update({ where: { id: job.customerId }, data: address });
    const [first] = job.contacts;
    if (first) await tx.contact.update({ where: { id: first.id }, data: address });
    return { ok: true };
  });
}
