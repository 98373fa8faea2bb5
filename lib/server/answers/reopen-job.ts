import type { MakerAccess } from '../auth/maker-access';
import { write } from '../db/database';
import { newId } from '../db/new-id';
import { currentRevision, isLocked, progressRows } from '../jobs/job-standing';
import { appendRecord } from '../record/append';

/**
 * Opens a signed-off job for changes. The sign-off stays on record; from here on the working copy can differ from it, so
 * a reason is kept.
 */
export async function reopenJob(
  maker: MakerAccess,
  jobId: string,
  reason: string,
): Promise<{ ok: true } | { ok: false; reason: 'noJob' | 'notSignedOff' | 'reasonMissing' }> {
  if (reason.trim() === '') return { ok: false, reason: 'reasonMissing' };
  return write(async (tx) => {
    const now = new Date();
    const touched = await tx.draft.updateMany({ where: { jobId }, data: { updatedAt: now } });
    if (touched.count === 0) return { ok: false, reason: 'noJob' };
    const job = await tx.job.findUniqueOrThrow({ where: { id: jobId }, include: progressRows });
    const current = currentRevision(job);
    if (!(current && isLocked(job))) return { ok: false, reason: 'notSignedOff' };
    await tx.revisionEvent.create({
      data: { id: newId(), revisionId: current.id, kind: 'reopened', occurrence: 0, at: now },
    });
    await appendRecord(
      tx,
      jobId,
      'reopened',
      { by: maker.userId, revision: current.number, reason: reason.trim() },
      now,
    );
    return { ok: true };
  });
}
