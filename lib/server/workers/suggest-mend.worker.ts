import { type SuggestedMend, type SuggestMendRequest, suggestMend } from '../image/suggest-mend';

/** Reads a mend's settings off a picture apart from the thread that answers requests. */
export function run(request: SuggestMendRequest): Promise<SuggestedMend> {
  return suggestMend(request);
}
