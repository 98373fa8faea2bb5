import { z } from 'zod';
import { type OnProgress, sendFile } from '../art/send-file';

/** What came of a picture that was sent; `reason` is a code the catalogue may have words for. */
export type HandedOver = { readonly ok: true } | { readonly ok: false; readonly reason: string; readonly kind: string };

const answerSchema = z.union([
  z.object({ ok: z.literal(true) }),
  z.object({ ok: z.literal(false), reason: z.string(), kind: z.string().optional() }),
]);

/** Sends a picture from the customer's page, as `sendFile` does. Never rejects. */
export async function handOver(
  token: string,
  file: File,
  onProgress: OnProgress,
  signal: AbortSignal,
): Promise<HandedOver> {
  const refused = (reason: string, kind = ''): HandedOver => ({ ok: false, reason, kind });
  const address = `/api/art/customer/${token}?${new URLSearchParams({ name: file.name })}`;
  const sent = await sendFile(address, file, onProgress, signal);
  if (!sent.ok) return refused(sent.reason);
  const answer = answerSchema.safeParse(sent.answer);
  if (!answer.success) return refused('notReached');
  return answer.data.ok ? { ok: true } : refused(answer.data.reason, answer.data.kind);
}
