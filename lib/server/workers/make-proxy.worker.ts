import { type MakeProxyRequest, makeProxy } from '../image/make-proxy';

/** Makes a small picture anew apart from the thread that answers requests. */
export function run(request: MakeProxyRequest): Promise<void> {
  return makeProxy(request);
}
