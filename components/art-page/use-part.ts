import { useEffect, useState } from 'react';
import type { Spot } from '@/lib/domain/art/art-facts';
import type { MendStep } from '@/lib/domain/art/mend/recipe';

/** How long a view must be left alone before its pixels are asked for. */
const AT_REST_MS = 200;
/** As much of a picture as is sent at once, px each way. */
export const LONGEST_PART_PX = 1_500;

/** A part of a picture pixel for pixel, and where on the picture it lies. */
export type Part = { readonly src: string; readonly box: Spot };

/**
 * A part of the picture as it is after some steps, pixel for pixel: the small copies that screens show are no longer true
 * when they are looked at this closely. Null while no part is wanted, on its way, or where it could not be had.
 */
export function usePart(artId: string, steps: readonly MendStep[], box: Spot | null): Part | null {
  const [part, setPart] = useState<(Part & { key: string }) | null>(null);
  const key = box ? JSON.stringify({ recipe: steps.length > 0 ? { format: 1, steps } : null, box }) : null;

  useEffect(() => {
    if (key === null) return;
    const calledOff = new AbortController();
    const timer = setTimeout(() => {
      fetchPart(artId, key, calledOff.signal).then(
        (src) => {
          if (calledOff.signal.aborted) URL.revokeObjectURL(src);
          else setPart({ key, src, box: (JSON.parse(key) as { box: Spot }).box });
        },
        // Without it the small copy stays in sight.
        () => undefined,
      );
    }, AT_REST_MS);
    return () => {
      clearTimeout(timer);
      calledOff.abort();
    };
  }, [artId, key]);

  useEffect(() => {
    const src = part?.src;
    return () => {
      if (src) URL.revokeObjectURL(src);
    };
  }, [part]);

  return part && part.key === key ? part : null;
}

async function fetchPart(artId: string, body: string, signal: AbortSignal): Promise<string> {
  const response = await fetch(`/api/art/mends/${artId}/part`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body,
    signal,
  });
  if (!response.ok) throw new Error(`a part of ${artId}: ${response.status}`);
  return URL.createObjectURL(await response.blob());
}
