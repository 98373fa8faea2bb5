import { garmentsOnOffer } from '@/lib/domain/layout/with-people';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { newId } from '@/lib/server/db/new-id';
import { editDraft } from '@/lib/server/drafts/drafts';
import { loadJob } from '@/lib/server/jobs/load-jobs';
import { editPeople } from '@/lib/server/people/edit-people';
import { takeListCounts } from '@/lib/server/people/take-list-counts';
import { sendRevision } from '@/lib/server/revisions/send-revision';
import { letteringOf } from '../unit/lettering/fonts-at-hand';
import { laidOutJob, withLettering } from './job-fixture';

/** Somebody of a crew; who names no size gets the first that is offered. */
export type CrewMember = { readonly name: string; readonly number: string; readonly sizeAt?: number };

/** A job whose tees carry everybody's own name and number on the back, letters 2 in tall, sent as Rev 1. */
export async function sendCrew(
  maker: MakerAccess,
  crew: readonly CrewMember[],
): Promise<{ jobId: string; revisionId: string }> {
  const { jobId } = await laidOutJob(maker);
  const lettering = letteringOf(['{name}', '{number}'], { squeezeFloorPercent: 50 });
  await editDraft(maker, jobId, (layout) => withLettering(layout, lettering));
  const job = await whole(maker, jobId);
  const [garment] = garmentsOnOffer(job.draft.layout, ({ size }) => size.label);
  if (!garment) throw new Error('no garment');
  const edits = crew.map(({ name, number, sizeAt = 0 }): ListEdit => {
    const size = garment.sizes[sizeAt % garment.sizes.length];
    if (!size) throw new Error('no size');
    const { blankId, sizeId } = size;
    const item = { itemId: newId(), garmentId: garment.garmentId, size: { blankId, sizeId }, typed: '', quantity: 1 };
    return {
      edit: 'add',
      line: { personId: newId(), fields: { name, number }, items: [item], meant: [] },
      before: null,
    };
  });
  const edited = await editPeople(maker, jobId, edits);
  if (!edited.ok || edited.refused.length > 0) throw new Error(JSON.stringify(edited));
  await takeListCounts(maker, jobId, garment.garmentId);
  const revisionId = newId();
  const { wholeVersion: draftVersion } = (await whole(maker, jobId)).draft;
  const sent = await sendRevision(maker, jobId, { draftVersion, note: 'Please look it over.', revisionId });
  if (!sent.ok) throw new Error(sent.reason);
  return { jobId, revisionId };
}

async function whole(maker: MakerAccess, jobId: string) {
  const job = await loadJob(maker, jobId);
  if (!job) throw new Error(`no job ${jobId}`);
  return job;
}
