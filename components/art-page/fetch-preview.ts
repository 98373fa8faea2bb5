import { z } from 'zod';
import { type ArtFacts, artFactsSchema } from '@/lib/domain/art/art-facts';
import type { MendStep } from '@/lib/domain/art/mend/recipe';

/** A picture as it would be after some steps: what screens show of it, and what the check measured on all of it. */
export type ShownPicture = {
  /** Address of a small copy. */
  readonly src: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly facts: ArtFacts;
  /** False where the steps leave every pixel as it was. */
  readonly changed: boolean;
};

export type FetchedPreview = { ok: true; picture: ShownPicture } | { ok: false; reason: string };

const refusedSchema = z.object({ reason: z.string() });

/**
 * Has steps computed on a picture, all of its pixels, without keeping anything. Rejects only when it was called off;
 * `notReached` is the reason where the server could not be asked.
 */
export async function fetchPreview(
  artId: string,
  steps: readonly MendStep[],
  signal: AbortSignal,
): Promise<FetchedPreview> {
  try {
    const response = await fetch(`/api/art/mends/${artId}/preview`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ format: 1, steps }),
      signal,
    });
    if (!response.ok) return { ok: false, reason: refusalIn(await response.json().catch(() => null)) };
    const sent = await response.formData();
    const [facts, webp] = [sent.get('facts'), sent.get('picture')];
    if (!(typeof facts === 'string' && webp instanceof Blob)) return { ok: false, reason: 'notReached' };
    const measured = artFactsSchema.parse(JSON.parse(facts));
    const { widthPx, heightPx } = measured;
    const changed = sent.get('changed') !== 'false';
    return { ok: true, picture: { src: URL.createObjectURL(webp), widthPx, heightPx, facts: measured, changed } };
  } catch (error) {
    if (signal.aborted) throw error;
    return { ok: false, reason: 'notReached' };
  }
}

function refusalIn(body: unknown): string {
  const refused = refusedSchema.safeParse(body);
  return refused.success ? refused.data.reason : 'failed';
}
