import { useEffect, useRef } from 'react';
import { z } from 'zod';
import { artRefSchema } from '@/lib/domain/art/art-ref';
import { checkSchema, type Picture } from './upload-picture';

/** How often the job is asked for new pictures, ms. */
const ASK_EVERY_MS = 2_500;

const answerSchema = z.object({
  pictures: z.array(checkSchema.extend({ artId: z.string(), name: z.string(), art: artRefSchema })),
});

/**
 * Asks for the pictures of a job now and then, until a moment is over (null: not at all), and hands on those that were not
 * there at the first look. Nothing is asked while the page is out of sight.
 */
export function useArrivals(
  jobId: string,
  until: Date | null,
  onArrived: (pictures: readonly Picture[]) => void,
): void {
  const arrived = useRef(onArrived);
  useEffect(() => {
    arrived.current = onArrived;
  }, [onArrived]);

  useEffect(() => {
    if (!until) return;
    let known: Set<string> | null = null;
    let isAsking = false;
    async function ask(): Promise<void> {
      if (isAsking || document.visibilityState === 'hidden') return;
      isAsking = true;
      const pictures = await picturesOf(jobId);
      isAsking = false;
      if (!pictures) return;
      const before = known;
      known = new Set(pictures.map(({ artId }) => artId));
      const fresh = before ? pictures.filter(({ artId }) => !before.has(artId)) : [];
      if (fresh.length > 0) arrived.current(fresh);
    }
    void ask();
    const timer = setInterval(() => {
      if (new Date() > until) clearInterval(timer);
      else void ask();
    }, ASK_EVERY_MS);
    return () => clearInterval(timer);
  }, [jobId, until]);
}

async function picturesOf(jobId: string): Promise<readonly Picture[] | null> {
  try {
    const response = await fetch(`/api/art/of-job/${jobId}`, { cache: 'no-store' });
    return response.ok ? answerSchema.parse(await response.json()).pictures : null;
  } catch {
    // Asked again in a moment.
    return null;
  }
}
