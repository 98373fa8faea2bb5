import { useEffect, useRef, useState } from 'react';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import { fetchPreview, type ShownPicture } from './fetch-preview';

/** How long a step must be left alone before it is computed: shorter than a person notices, longer than a slider's steps. */
const AT_REST_MS = 250;
/** Pictures kept for undoing and doing again. */
const MOST_KEPT = 24;

type Known = { readonly picture: ShownPicture } | { readonly reason: string };

/** The picture after some steps. `working` until it was computed; `refused` where it cannot be. */
export type Preview =
  | { readonly state: 'ready'; readonly picture: ShownPicture }
  | { readonly state: 'working' }
  | { readonly state: 'refused'; readonly reason: string };

/** The picture that is mended, and the mend of it that was opened again, which need not be computed. */
export type PreviewedArt = {
  readonly artId: string;
  readonly original: ShownPicture;
  readonly opened: { readonly steps: readonly MendStep[]; readonly picture: ShownPicture } | null;
};

export type Previews = {
  /** Of so many steps; computed when asked for by `wanted`. */
  readonly of: (steps: readonly MendStep[]) => Preview;
  /** Asks again for what was refused. */
  readonly again: () => void;
};

/**
 * Pictures of a mend while it lasts. What is `wanted` is computed once it has rested for a moment, one after another; what
 * is no longer wanted is called off.
 */
export function usePreviews(
  { artId, original, opened }: PreviewedArt,
  wanted: readonly (readonly MendStep[] | null)[],
): Previews {
  const [known, setKnown] = useState<ReadonlyMap<string, Known>>(
    () => new Map(opened ? [[keyOf(opened.steps), { picture: opened.picture }]] : []),
  );
  const next = wanted.find((steps) => steps && steps.length > 0 && !known.has(keyOf(steps)));
  const key = next ? keyOf(next) : null;
  const inSight = useRef<readonly string[]>([]);
  useEffect(() => {
    inSight.current = wanted.flatMap((steps) => (steps ? [keyOf(steps)] : []));
  });

  useEffect(() => {
    if (key === null) return;
    const calledOff = new AbortController();
    const timer = setTimeout(() => {
      fetchPreview(artId, JSON.parse(key) as MendStep[], calledOff.signal).then(
        (fetched) => {
          // What came too late is not kept, and its picture is let go.
          if (calledOff.signal.aborted) return fetched.ok ? URL.revokeObjectURL(fetched.picture.src) : undefined;
          setKnown((before) =>
            withKnown(before, key, fetched.ok ? fetched : { reason: fetched.reason }, inSight.current),
          );
        },
        () => undefined,
      );
    }, AT_REST_MS);
    return () => {
      clearTimeout(timer);
      calledOff.abort();
    };
  }, [artId, key]);

  return {
    of: (steps) => {
      if (steps.length === 0) return { state: 'ready', picture: original };
      const found = known.get(keyOf(steps));
      if (!found) return { state: 'working' };
      return 'picture' in found
        ? { state: 'ready', picture: found.picture }
        : { state: 'refused', reason: found.reason };
    },
    again: () => setKnown((before) => new Map([...before].filter(([, each]) => 'picture' in each))),
  };
}

function keyOf(steps: readonly MendStep[]): string {
  return JSON.stringify(steps);
}

/** The longest known goes, unless it is being looked at. */
function withKnown(
  before: ReadonlyMap<string, Known>,
  key: string,
  found: Known,
  inSight: readonly string[],
): ReadonlyMap<string, Known> {
  const after = new Map([...before, [key, found]]);
  for (const [old, dropped] of before) {
    if (after.size <= MOST_KEPT) break;
    if (inSight.includes(old)) continue;
    if ('picture' in dropped && dropped.picture.src.startsWith('blob:')) URL.revokeObjectURL(dropped.picture.src);
    after.delete(old);
  }
  return after;
}
