import { type ComposeRequest, compose } from '../image/compose';

/** Paints and encodes a picture apart from the thread that answers requests. */
export function run(request: ComposeRequest): Promise<Uint8Array> {
  return compose(request);
}
