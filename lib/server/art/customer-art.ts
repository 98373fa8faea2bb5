import { z } from 'zod';
import { reader, write } from '../db/database';
import { allowAttempt } from '../limits/attempts';
import type { LinkAccess } from '../links/link-access';
import { appendRecord } from '../record/append';
import { ensureChecked } from './art-checks';
import { type ArtView, listArt } from './list-art';
import { type ArtUpload, type ReceivedArt, receiveArt } from './receive-art';

/** As many pictures as can be handed in for a job through its link, 25 MB each. */
export const MOST_CUSTOMER_PICTURES = 30;

/** How a picture that came through a link is written into the job's record. */
const CAME = 'artFromCustomer';
const cameSchema = z.object({ art: z.string(), link: z.string() });

export type ReceivedFromCustomer = ReceivedArt | { readonly ok: false; readonly reason: 'tooManyPictures' };

/** Takes in a picture from a customer, as `receiveArt` does, and measures it; only so many for a job, and so fast. */
export async function receiveFromCustomer(
  { jobId, linkId, contactId }: LinkAccess,
  upload: Omit<ArtUpload, 'jobId'>,
  now = new Date(),
): Promise<ReceivedFromCustomer> {
  const isFull = (await timesCame(jobId)) >= MOST_CUSTOMER_PICTURES;
  if (isFull || !allowAttempt('customerPicture', linkId, now)) return { ok: false, reason: 'tooManyPictures' };
  const received = await receiveArt({ ...upload, jobId });
  if (!received.ok) return received;
  const { art } = received;
  await ensureChecked(art.ref.sha256, upload.signal).catch(() => null);
  const came = { art: art.artId, link: linkId, by: contactId };
  if (!(await handedIn(jobId)).has(art.artId)) await write((tx) => appendRecord(tx, jobId, CAME, came, now));
  return received;
}

/** The pictures that were handed in for a job through its link, newest first; not what the maker added. */
export async function customerPictures({ jobId }: LinkAccess): Promise<ArtView[]> {
  const [came, art] = await Promise.all([handedIn(jobId), listArt(jobId)]);
  return art.filter(({ artId }) => came.has(artId)).reverse();
}

function timesCame(jobId: string): Promise<number> {
  return reader().recordEntry.count({ where: { jobId, kind: CAME } });
}

async function handedIn(jobId: string): Promise<ReadonlySet<string>> {
  const entries = await reader().recordEntry.findMany({
    where: { jobId, kind: CAME },
    select: { payload: { select: { bytes: true } } },
  });
  return new Set(
    entries.flatMap(({ payload }) => {
      const said = payload && cameSchema.safeParse(JSON.parse(new TextDecoder().decode(payload.bytes)));
      return said?.success ? [said.data.art] : [];
    }),
  );
}
