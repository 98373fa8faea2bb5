import { z } from 'zod';
import { type ArtFacts, artFactsSchema } from '@/lib/domain/art/art-facts';
import { ART_NOTES, type ArtNote } from '@/lib/domain/art/art-notes';
import { type ArtRef, artRefSchema } from '@/lib/domain/art/art-ref';
import { type OnProgress, sendFile } from './send-file';

/** A picture of the job that can be laid on a garment. */
export type Picture = {
  readonly artId: string;
  readonly name: string;
  readonly art: ArtRef;
  /** What the check measured; null or left out where it was not checked yet. */
  readonly facts?: ArtFacts | null | undefined;
  readonly notes?: readonly ArtNote[] | undefined;
};

/** What the check says of a picture, as it comes from the server. */
export const checkSchema = z.object({
  facts: artFactsSchema.nullish(),
  notes: z.array(z.enum(ART_NOTES)).optional(),
});

/** What came of handing over a file; `reason` is a code of the catalogue's `art` subject where it knows one. */
export type Uploaded =
  | { readonly ok: true; readonly picture: Picture; readonly alreadyThere: boolean }
  | { readonly ok: false; readonly reason: string; readonly kind: string };

const answerSchema = z.union([
  z.object({
    ok: z.literal(true),
    art: checkSchema.extend({ artId: z.string(), name: z.string(), ref: artRefSchema }),
    alreadyThere: z.boolean(),
  }),
  z.object({ ok: z.literal(false), reason: z.string(), kind: z.string().optional() }),
]);

/** Hands a picture file over to the job, as `sendFile` does. Never rejects. */
export function uploadPicture(
  jobId: string,
  file: File,
  onProgress?: OnProgress,
  signal?: AbortSignal,
): Promise<Uploaded> {
  const address = `/api/art/upload?${new URLSearchParams({ job: jobId, name: file.name })}`;
  return sendPicture(address, file, onProgress, signal);
}

/** The same from the maker's phone, which is let in by the token of the code it was shown. */
export function uploadFromPhone(
  token: string,
  file: File,
  onProgress?: OnProgress,
  signal?: AbortSignal,
): Promise<Uploaded> {
  const address = `/api/art/phone/${token}?${new URLSearchParams({ name: file.name })}`;
  return sendPicture(address, file, onProgress, signal);
}

async function sendPicture(
  address: string,
  file: File,
  onProgress?: OnProgress,
  signal?: AbortSignal,
): Promise<Uploaded> {
  const refused = (reason: string, kind = ''): Uploaded => ({ ok: false, reason, kind });
  const sent = await sendFile(address, file, onProgress, signal);
  if (!sent.ok) return refused(sent.reason);
  if (sent.status === 401) return refused('signedOut');
  const answer = answerSchema.safeParse(sent.answer);
  if (!answer.success) return refused('notReached');
  if (!answer.data.ok) return refused(answer.data.reason, answer.data.kind);
  const { ref, ...picture } = answer.data.art;
  return { ok: true, picture: { ...picture, art: ref }, alreadyThere: answer.data.alreadyThere };
}
