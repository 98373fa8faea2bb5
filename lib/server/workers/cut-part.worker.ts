import { type CutPartRequest, cutPart } from '../image/cut-part';

/** Cuts a part out of a kept picture apart from the thread that answers requests. */
export function run(request: CutPartRequest): Promise<Uint8Array | null> {
  return cutPart(request);
}
