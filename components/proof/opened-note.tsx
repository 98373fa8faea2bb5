import { useEffect } from 'react';

/** Shorter than anybody reads, longer than a preview of a link is looked at; common practice, no source. */
const SEEN_MS = 2_000;

type OpenedNoteProps = {
  /** Where to tell. */
  action: string;
  revisionId: string;
};

/** Tells the shop once that the page was looked at: that it was in sight for two seconds. Shows nothing. */
export function OpenedNote({ action, revisionId }: OpenedNoteProps) {
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const tell = () => {
      document.removeEventListener('visibilitychange', look);
      const body = new URLSearchParams({ revision: revisionId });
      // Whether it arrives is nobody's worry on this page.
      fetch(action, { method: 'POST', body, keepalive: true }).catch(() => {});
    };
    const look = () => {
      clearTimeout(timer);
      if (document.visibilityState === 'visible') timer = setTimeout(tell, SEEN_MS);
    };
    look();
    document.addEventListener('visibilitychange', look);
    return () => {
      clearTimeout(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, [action, revisionId]);
  return null;
}
