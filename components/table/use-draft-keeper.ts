import { useEffect, useState, useSyncExternalStore } from 'react';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { DraftKeeper, type SaveDraft, type Saving } from './draft-keeper';

/** Keeps the layout on the table saved, also when the page is put away, and asks before unsaved work is left behind. */
export function useDraftKeeper(
  layout: LayoutDocument,
  draft: { readonly version: number; readonly layout: LayoutDocument },
  save: SaveDraft,
  onLeave: () => void,
): { keeper: DraftKeeper; saving: Saving } {
  const [keeper] = useState(() => new DraftKeeper({ save, draft, now: () => new Date() }));
  const saving = useSyncExternalStore(keeper.subscribe, keeper.saving, keeper.saving);

  useEffect(() => keeper.offer(layout), [keeper, layout]);

  useEffect(() => {
    const leave = () => void keeper.flush();
    const putAway = () => {
      if (document.visibilityState === 'hidden') leave();
    };
    const close = (event: BeforeUnloadEvent) => {
      if (keeper.isKept()) return;
      void keeper.flush();
      event.preventDefault();
    };
    document.addEventListener('visibilitychange', putAway);
    window.addEventListener('pagehide', leave);
    window.addEventListener('beforeunload', close);
    return () => {
      document.removeEventListener('visibilitychange', putAway);
      window.removeEventListener('pagehide', leave);
      window.removeEventListener('beforeunload', close);
    };
  }, [keeper]);

  useEffect(
    () => () => {
      // Other pages of the job may have been fetched before what was done here.
      if (keeper.version() !== draft.version || !keeper.isKept()) void keeper.flush().then(onLeave);
    },
    [keeper, draft.version, onLeave],
  );

  return { keeper, saving };
}
