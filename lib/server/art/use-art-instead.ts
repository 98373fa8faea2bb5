import type { MakerAccess } from '../auth/maker-access';
import { reader } from '../db/database';
import { editDraft } from '../drafts/drafts';
import { artRows, artView } from './list-art';

export type UsedInstead =
  | {
      readonly ok: true;
      readonly version: number /** How many prints carry the other picture now. */;
      readonly prints: number;
    }
  | { readonly ok: false; readonly reason: 'noJob' | 'locked' | 'noArt' };

/**
 * Gives every print of the working copy that carries the one picture the other. The readings stay: drop, across and the
 * width of the ink, which is now the other picture's.
 */
export async function useArtInstead(
  maker: MakerAccess,
  jobId: string,
  fromArtId: string,
  toArtId: string,
): Promise<UsedInstead> {
  const row = await reader().art.findUnique({ where: { id: toArtId }, include: artRows });
  if (!row || row.jobId !== jobId) return { ok: false, reason: 'noArt' };
  const art = artView(row).ref;
  let prints = 0;
  const saved = await editDraft(maker, jobId, (layout) => ({
    ...layout,
    prints: layout.prints.map((print) => {
      if (print.content.kind !== 'art' || print.content.art.artId !== fromArtId) return print;
      prints += 1;
      return { ...print, content: { kind: 'art', art } };
    }),
  }));
  return saved.ok ? { ...saved, prints } : saved;
}
