import { type CheckedFont, type CheckFontRequest, checkFont } from '../fonts/check-font';

/** Tries an uploaded font apart from the thread that answers requests. */
export function run(request: CheckFontRequest): Promise<CheckedFont> {
  return checkFont(request);
}
