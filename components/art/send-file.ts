/** What came back when a file was sent, read as JSON (null where it was none); or why nothing did. */
export type SentFile =
  | { readonly ok: true; readonly status: number; readonly answer: unknown }
  | { readonly ok: false; readonly reason: 'notReached' | 'stopped' | 'tooLarge' };

export type OnProgress = (share: number) => void;

/**
 * Sends a file as a request's whole body; `onProgress` hears the share that has been sent, 0 to 1, and `signal` stops it,
 * with the reason `stopped`. Never rejects.
 */
export function sendFile(
  address: string,
  file: File,
  onProgress: OnProgress = () => {},
  signal?: AbortSignal,
): Promise<SentFile> {
  return new Promise((resolve) => {
    const request = new XMLHttpRequest();
    request.open('POST', address);
    request.upload.onprogress = ({ loaded, total }) => onProgress(total > 0 ? loaded / total : 0);
    request.onerror = () => resolve({ ok: false, reason: 'notReached' });
    request.onabort = () => resolve({ ok: false, reason: 'stopped' });
    signal?.addEventListener('abort', () => request.abort(), { once: true });
    request.onload = () => {
      if (request.status === 413) resolve({ ok: false, reason: 'tooLarge' });
      else resolve({ ok: true, status: request.status, answer: jsonOf(request.responseText) });
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
