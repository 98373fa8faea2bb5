import type { GarmentRefusal } from '@/components/garments/refusal-words';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { editDraft } from '@/lib/server/drafts/drafts';

/** Leaves the edit, and with it the transaction, without writing. */
class EditStopped extends Error {
  override readonly name = 'EditStopped';

  constructor(readonly outcome: GarmentRefusal | 'unchanged') {
    super(`edit of garments stopped: ${outcome}`);
  }
}

/**
 * Edits the garments of a job's working copy: `change` gives the next document or why there is none. An edit that changes
 * nothing writes nothing, so that what was sent does not count as changed since.
 */
export async function editGarments(
  maker: MakerAccess,
  jobId: string,
  change: (layout: LayoutDocument) => LayoutDocument | GarmentRefusal,
): Promise<{ ok: true } | { ok: false; reason: GarmentRefusal }> {
  try {
    const edited = await editDraft(maker, jobId, (layout) => {
      const next = change(layout);
      if (typeof next === 'string') throw new EditStopped(next);
      if (JSON.stringify(next) === JSON.stringify(layout)) throw new EditStopped('unchanged');
      return next;
    });
    return edited.ok ? { ok: true } : edited;
  } catch (error) {
    if (!(error instanceof EditStopped)) throw error;
    return error.outcome === 'unchanged' ? { ok: true } : { ok: false, reason: error.outcome };
  }
}

/** Whether the working copy still has this garment. */
export function hasGarment(layout: Pick<LayoutDocument, 'garments'>, garmentId: string): boolean {
  return layout.garments.some((garment) => garment.garmentId === garmentId);
}
