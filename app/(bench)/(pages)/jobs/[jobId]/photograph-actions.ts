'use server';

import { refresh } from 'next/cache';
import { requireMaker } from '@/app/maker';
import { type FormState, refused, taken } from '@/components/ui/form-state';
import type { Garment } from '@/lib/domain/layout/document';
import { withGarment } from '@/lib/domain/layout/garment-members';
import { withoutPhotographs, withPhotographs } from '@/lib/domain/layout/photograph-scene';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { photographsFor } from '@/lib/server/blanks/photographs';
import { loadJob } from '@/lib/server/jobs/load-jobs';
import { requireShop } from '@/lib/server/shop/read-shop';
import { editGarments, editingGarment } from './edit-garments';

/** Takes up the shop's photographs of a garment as they are now. */
export async function usePhotographsAction(jobId: string, garmentId: string): Promise<FormState> {
  const maker = await requireMaker();
  const job = await loadJob(maker, jobId);
  const garment = job?.draft.layout.garments.find((each) => each.garmentId === garmentId);
  const photographs = await photographsFor(maker, garment?.blanks.map(({ shopBlankId }) => shopBlankId) ?? []);
  return edit(maker, jobId, garmentId, (each) => withPhotographs(each, photographs));
}

/** Shows a garment as drawn alone. */
export async function stopPhotographsAction(jobId: string, garmentId: string): Promise<FormState> {
  return edit(await requireMaker(), jobId, garmentId, withoutPhotographs);
}

async function edit(
  maker: MakerAccess,
  jobId: string,
  garmentId: string,
  change: (garment: Garment) => Garment,
): Promise<FormState> {
  const { unit } = await requireShop();
  const edited = await editGarments(
    maker,
    { jobId, unit },
    editingGarment(garmentId, (layout) => withGarment(layout, garmentId, change)),
  );
  if (!edited.ok) return refused({}, edited.reason);
  refresh();
  return taken({});
}
