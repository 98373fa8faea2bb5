import { z } from 'zod';

/** What came of a picture that was sent; `reason` is a code the catalogue may have words for. */
export type HandedOver = { readonly ok: true } | { readonly ok: false; readonly reason: string; readonly kind: string };

const answerSchema = z.union([
  z.object({ ok: z.literal(true) }),
  z.object({ ok: z.literal(false), reason: z.string(), kind: z.string().optional() }),
]);

/**
 * Sends a picture from the customer's page; `onProgress` hears the share that has been sent, 0 to 1, and `signal` stops it,
 * with the reason `stopped`. Never rejects.
 */
export function handOver(
  token: string,
  file: File,
  onProgress: (share: number) => void,
  signal: AbortSignal,
): Promise<HandedOver> {
  return new Promise((resolve) => {
    const refused = (reason: string, kind = '') => resolve({ ok: false, reason, kind });
    const request = new XMLHttpRequest();
    request.open('POST', `/api/art/customer/${token}?${new URLSearchParams({ name: file.name })}`);
    request.upload.onprogress = ({ loaded, total }) => onProgress(total > 0 ? loaded / total : 0);
    request.onerror = () => refused('notReached');
    request.onabort = () => refused('stopped');
    signal.addEventListener('abort', () => request.abort(), { once: true });
    request.onload = () => {
      if (request.status === 413) return refused('tooLarge');
      const answer = answerSchema.safeParse(jsonOf(request.responseText));
      if (!answer.success) return refused('notReached');
      return answer.data.ok ? resolve({ ok: true }) : refused(answer.data.reason, answer.data.kind);
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
