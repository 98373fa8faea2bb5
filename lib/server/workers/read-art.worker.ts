import { type ReadArtRequest, type ReadArtResult, readArt } from '../image/read-art';

/** Reads an uploaded picture apart from the thread that answers requests. */
export function run(request: ReadArtRequest): Promise<ReadArtResult> {
  return readArt(request);
}
