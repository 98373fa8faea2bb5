import { z } from 'zod';

/** What a photograph is of, by the ids of the blank's list. */
export type PhotographPlace = { readonly sizeId: string; readonly colourId: string; readonly side: string };

/** What came of handing over a photograph; `reason` is a code of the catalogue where it knows one. */
export type UploadedPhotograph =
  | { readonly ok: true; readonly photographId: string }
  | { readonly ok: false; readonly reason: string; readonly kind: string };

const answerSchema = z.union([
  z.object({ ok: z.literal(true), photographId: z.string() }),
  z.object({ ok: z.literal(false), reason: z.string(), kind: z.string().default('') }),
]);

/** Hands a photograph of a blank over to the shop. Never rejects. */
export async function uploadPhotograph(
  blankId: string,
  { sizeId, colourId, side }: PhotographPlace,
  file: File,
): Promise<UploadedPhotograph> {
  const query = new URLSearchParams({ size: sizeId, colour: colourId, side });
  try {
    const response = await fetch(`/api/blanks/${blankId}/photographs/upload?${query}`, { method: 'POST', body: file });
    if (response.status === 413) return { ok: false, reason: 'tooLarge', kind: '' };
    return answerSchema.parse(await response.json());
  } catch {
    return { ok: false, reason: 'notReached', kind: '' };
  }
}
