import type { IncomingMessage } from 'node:http';

const MEBIBYTE = 1_048_576;

/** What a form may weigh: typed words, never a file. */
export const FORM_LIMIT_BYTES = MEBIBYTE;

/** What an upload may weigh on the wire: 25 MB of picture or font. The route counts the bytes it takes in as well. */
export const UPLOAD_LIMIT_BYTES = 25 * MEBIBYTE;

/** Raw routes that take a file; they are outside the proxy's matcher too. */
export const UPLOAD_PATH = /^\/api\/(art|fonts|blanks\/[^/]+\/photographs)(\/|$)/;

export type BodyRefusal = { status: 411 | 413; sentence: string };

/**
 * Why a request's body is not taken in, decided from its headers before a byte of it is read; null when it may come.
 * A body of undeclared length is refused, since a cut-off one could not be told from a whole one.
 */
export function refusedBody(request: Pick<IncomingMessage, 'headers' | 'url'>): BodyRefusal | null {
  const { headers } = request;
  if (headers['transfer-encoding'] !== undefined) {
    return { status: 411, sentence: 'Send this with its length (a Content-Length header).' };
  }
  const path = (request.url ?? '/').split('?', 1)[0] ?? '/';
  const limit = UPLOAD_PATH.test(path) ? UPLOAD_LIMIT_BYTES : FORM_LIMIT_BYTES;
  if (Number(headers['content-length'] ?? 0) <= limit) return null;
  return { status: 413, sentence: `That is more than can be sent here: at most ${limit / MEBIBYTE} MB.` };
}
