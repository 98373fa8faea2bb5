import type { GarmentRefusal } from '@/components/garments/refusal-words';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { fontsUsed } from '@/lib/domain/layout/print-content';
import { restacked } from '@/lib/domain/layout/stack';
import { type LengthUnit, tradeStepUm } from '@/lib/domain/measure/length';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { editDraft } from '@/lib/server/drafts/drafts';
import { loadJob } from '@/lib/server/jobs/load-jobs';
import { layoutType } from '@/lib/server/text/layout-type';

/** Why there is no next document, with what the words for it need to know. */
export type GarmentEditRefusal = {
  readonly reason: GarmentRefusal;
  readonly detail?: Readonly<Record<string, string | number>> | undefined;
};

/** What a change of garments gives: the next document, or why there is none. */
export type GarmentEdit =
  | { readonly ok: true; readonly layout: LayoutDocument }
  | ({ readonly ok: false } & GarmentEditRefusal);

/** Leaves the edit, and with it the transaction, without writing. */
class EditStopped extends Error {
  override readonly name = 'EditStopped';

  constructor(readonly outcome: GarmentEditRefusal | 'unchanged') {
    super(`edit of garments stopped: ${outcome === 'unchanged' ? outcome : outcome.reason}`);
  }
}

/**
 * Edits the garments of a job's working copy; prints that keep under others follow them on new sizes, too. An edit that
 * changes nothing writes nothing, so that what was sent does not count as changed since.
 */
export async function editGarments(
  maker: MakerAccess,
  { jobId, unit }: { jobId: string; unit: LengthUnit },
  change: (layout: LayoutDocument) => GarmentEdit,
): Promise<{ ok: true } | ({ ok: false } & GarmentEditRefusal)> {
  try {
    // Fonts are opened before the transaction: nobody waits in it for a file.
    const job = await loadJob(maker, jobId);
    const type = job && (await layoutType(job.draft.layout));
    const edited = await editDraft(maker, jobId, (layout) => {
      const next = change(layout);
      if (!next.ok) throw new EditStopped(next);
      if (JSON.stringify(next.layout) === JSON.stringify(layout)) throw new EditStopped('unchanged');
      // Lettering that came in the meantime keeps its drops until the next edit.
      if (fontsUsed(next.layout).some((font) => !type?.has(font))) return next.layout;
      return restacked(layout, next.layout, tradeStepUm(unit), type);
    });
    return edited.ok ? { ok: true } : edited;
  } catch (error) {
    if (!(error instanceof EditStopped)) throw error;
    const { outcome } = error;
    return outcome === 'unchanged' ? { ok: true } : { ok: false, reason: outcome.reason, detail: outcome.detail };
  }
}

/** Edits one garment, if the working copy still has it. */
export function editingGarment(
  garmentId: string,
  change: (layout: LayoutDocument) => LayoutDocument | GarmentEdit,
): (layout: LayoutDocument) => GarmentEdit {
  return (layout) => {
    if (!layout.garments.some((garment) => garment.garmentId === garmentId)) return { ok: false, reason: 'noGarment' };
    const next = change(layout);
    return 'ok' in next ? next : { ok: true, layout: next };
  };
}
