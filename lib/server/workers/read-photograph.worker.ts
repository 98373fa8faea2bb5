import { type ReadPhotograph, type ReadPhotographRequest, readPhotograph } from '../image/read-photograph';

/** Reads an uploaded photograph apart from the thread that answers requests. */
export function run(request: ReadPhotographRequest): Promise<ReadPhotograph> {
  return readPhotograph(request);
}
