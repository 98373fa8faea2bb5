import { useEffect, useState, useSyncExternalStore } from 'react';
import type { PeopleList } from '@/lib/domain/people/list';
import { ListKeeper, type ListShown, type SaveListAnswer } from './list-keeper';

/** How often a page that is looked at asks what others did, ms. */
const LOOK_AGAIN_MS = 10_000;

type ListOptions = {
  readonly jobId: string;
  readonly list: PeopleList;
  readonly makerName: string;
  readonly letteredColumnIds: readonly string[];
};

/** A job's list, kept saved, with what others do to it meanwhile. Asks before unsaved changes are left behind. */
export function useList({ jobId, list, makerName, letteredColumnIds }: ListOptions): {
  keeper: ListKeeper;
  shown: ListShown;
} {
  const address = `/api/people/${encodeURIComponent(jobId)}`;
  // The first list is where it begins; what comes later is taken in by the keeper, beside what is not saved yet.
  const [keeper] = useState(
    () =>
      new ListKeeper({
        list,
        save: (baseVersion, edits) => save(address, JSON.stringify({ baseVersion, edits })),
        by: () => ({ by: makerName, at: new Date().toISOString(), letteredColumnIds }),
      }),
  );
  const shown = useSyncExternalStore(keeper.subscribe, keeper.shown, keeper.shown);

  useEffect(() => keeper.take(list), [keeper, list]);

  useEffect(() => {
    const look = async () => {
      if (document.visibilityState !== 'visible' || !keeper.isKept()) return;
      const answer = await fetch(`${address}?since=${keeper.version()}`).catch(() => null);
      if (answer?.status === 200) keeper.take((await answer.json()) as PeopleList);
    };
    const timer = setInterval(look, LOOK_AGAIN_MS);
    const close = (event: BeforeUnloadEvent) => {
      if (!keeper.isKept()) event.preventDefault();
    };
    window.addEventListener('focus', look);
    window.addEventListener('beforeunload', close);
    return () => {
      clearInterval(timer);
      window.removeEventListener('focus', look);
      window.removeEventListener('beforeunload', close);
    };
  }, [keeper, address]);

  return { keeper, shown };
}

async function save(address: string, body: string): Promise<SaveListAnswer> {
  const answer = await fetch(address, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body });
  return (await answer.json()) as SaveListAnswer;
}
