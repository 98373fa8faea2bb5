import type { MakerAccess } from '../auth/maker-access';
import { write } from '../db/database';
import { readStoredLayout } from '../drafts/stored-layout';
import { jobProgress, listKeyOf, progressRows } from '../jobs/job-standing';
import { listOf } from './list-rows';

/** Lets what a job's list comes to stand as what is ordered of a garment, in place of what was counted by hand. */
export async function takeListCounts(
  _maker: MakerAccess,
  jobId: string,
  garmentId: string,
): Promise<{ ok: true } | { ok: false; reason: 'noJob' | 'locked' }> {
  return write(async (tx) => {
    const touched = await tx.draft.updateMany({ where: { jobId }, data: { updatedAt: new Date() } });
    if (touched.count === 0) return { ok: false, reason: 'noJob' };
    const job = await tx.job.findUniqueOrThrow({ where: { id: jobId }, include: progressRows });
    const { layout, locked } = jobProgress(job, await listOf(tx, listKeyOf(job), 'readAnew'));
    if (locked || !job.draft) return { ok: false, reason: 'locked' };
    const counts = layout.garments.find((garment) => garment.garmentId === garmentId)?.counts ?? [];
    const stored = readStoredLayout(job.draft.json);
    const garments = stored.garments.map((garment) =>
      garment.garmentId === garmentId ? { ...garment, counts } : garment,
    );
    const json = JSON.stringify({ ...stored, garments });
    await tx.draft.update({ where: { jobId }, data: { json, version: job.draft.version + 1 } });
    return { ok: true };
  });
}
