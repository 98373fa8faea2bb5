import { z } from 'zod';

/** What came of handing over a font; `reason` is a code of the catalogue's `fonts` subject where it knows one. */
export type UploadedFont =
  | { readonly ok: true; readonly family: string; readonly style: string; readonly alreadyThere: boolean }
  | { readonly ok: false; readonly reason: string };

const answerSchema = z.union([
  z.object({
    ok: z.literal(true),
    ref: z.object({ family: z.string(), style: z.string() }),
    alreadyThere: z.boolean(),
  }),
  z.object({ ok: z.literal(false), reason: z.string() }),
]);

/** Hands a font file over to the shop. Never rejects. */
export async function uploadFont(file: File): Promise<UploadedFont> {
  try {
    const answer = await fetch(`/api/fonts/upload?${new URLSearchParams({ name: file.name })}`, {
      method: 'POST',
      body: file,
    });
    if (answer.status === 413) return { ok: false, reason: 'tooLarge' };
    const said = answerSchema.parse(await answer.json());
    return said.ok ? { ok: true, ...said.ref, alreadyThere: said.alreadyThere } : said;
  } catch {
    return { ok: false, reason: 'notReached' };
  }
}
