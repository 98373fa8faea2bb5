import { z } from 'zod';
import { type ArtRef, artRefSchema } from '@/lib/domain/art/art-ref';

/** A picture of the job that can be laid on a garment. */
export type Picture = { readonly artId: string; readonly name: string; readonly art: ArtRef };

/** What came of handing over a file; `reason` is a code of the catalogue's `art` subject where it knows one. */
export type Uploaded =
  | { readonly ok: true; readonly picture: Picture; readonly alreadyThere: boolean }
  | { readonly ok: false; readonly reason: string; readonly kind: string };

const answerSchema = z.union([
  z.object({
    ok: z.literal(true),
    art: z.object({ artId: z.string(), name: z.string(), ref: artRefSchema }),
    alreadyThere: z.boolean(),
  }),
  z.object({ ok: z.literal(false), reason: z.string(), kind: z.string().optional() }),
]);

type OnProgress = (share: number) => void;

/** Hands a picture file over to the job; `onProgress` hears the share that has been sent, 0 to 1. Never rejects. */
export function uploadPicture(jobId: string, file: File, onProgress?: OnProgress): Promise<Uploaded> {
  return sendPicture(`/api/art/upload?${new URLSearchParams({ job: jobId, name: file.name })}`, file, onProgress);
}

/** The same from the maker's phone, which is let in by the token of the code it was shown. */
export function uploadFromPhone(token: string, file: File, onProgress?: OnProgress): Promise<Uploaded> {
  return sendPicture(`/api/art/phone/${token}?${new URLSearchParams({ name: file.name })}`, file, onProgress);
}

function sendPicture(address: string, file: File, onProgress: OnProgress = () => {}): Promise<Uploaded> {
  return new Promise((resolve) => {
    const refused = (reason: string, kind = '') => resolve({ ok: false, reason, kind });
    const request = new XMLHttpRequest();
    request.open('POST', address);
    request.upload.onprogress = ({ loaded, total }) => onProgress(total > 0 ? loaded / total : 0);
    request.onerror = () => refused('notReached');
    request.onload = () => {
      if (request.status === 401) return refused('signedOut');
      if (request.status === 413) return refused('tooLarge');
      const answer = answerSchema.safeParse(jsonOf(request.responseText));
      if (!answer.success) return refused('notReached');
      if (!answer.data.ok) return refused(answer.data.reason, answer.data.kind);
      const { artId, name, ref } = answer.data.art;
      return resolve({ ok: true, picture: { artId, name, art: ref }, alreadyThere: answer.data.alreadyThere });
    };
    request.send(file);
  });
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
