import { reader } from '../db/database';
import { makePictures } from './pictures';

// A page sends a revision and the work beside the pages draws its pictures; each may have its own copy of this module, so
// they meet on the process.
const slot = Symbol.for('yokemark.picture-work');
const holder = globalThis as { [slot]?: (revisionId: string) => void };

/** Asks for a revision's pictures to be made soon; where nothing runs beside the pages, they are made when asked for. */
export function askForPictures(revisionId: string): void {
  holder[slot]?.(revisionId);
}

/**
 * Makes pictures for as long as the server runs: first those that an earlier run did not finish, then what is asked for,
 * one revision after the other. Answers with how to stop it.
 */
export function startPictureWork(): () => Promise<void> {
  let stopped = false;
  let last: Promise<void> = unfinishedRevisions()
    .then(async (revisionIds) => {
      for (const revisionId of revisionIds) if (!stopped) await attempt(revisionId);
    })
    .catch((error: unknown) => console.error('Unfinished pictures could not be looked up.', error));
  holder[slot] = (revisionId) => {
    if (!stopped) last = last.then(() => (stopped ? undefined : attempt(revisionId)));
  };
  return async () => {
    stopped = true;
    holder[slot] = undefined;
    await last;
  };

  async function attempt(revisionId: string): Promise<void> {
    try {
      await makePictures(revisionId, () => stopped);
    } catch (error) {
      if (stopped) return;
      console.error(
        `Pictures of revision ${revisionId} are not all made yet; each is tried again when it is asked for.`,
        error,
      );
    }
  }
}

/** Revisions that show more drawings than there are pictures of, newest first. */
async function unfinishedRevisions(): Promise<string[]> {
  const revisions = await reader().revision.findMany({
    orderBy: { createdAt: 'desc' },
    // Lines and photographs are made when they are asked for.
    select: {
      id: true,
      _count: { select: { scenes: true, pictures: { where: { key: { not: { contains: '-' } } } } } },
    },
  });
  return revisions.filter(({ _count }) => _count.pictures < _count.scenes).map(({ id }) => id);
}
