import type { Tick } from '@/lib/domain/revision/answer';

/** The id of a tick's box on the page. */
export function tickId(tick: Tick): string {
  return `tick-${tick}`;
}
