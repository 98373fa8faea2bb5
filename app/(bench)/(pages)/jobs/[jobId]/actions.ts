'use server';

import { refresh } from 'next/cache';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import { requireMaker } from '@/app/maker';
import { readForm, typedIn } from '@/app/read-form';
import { chosenCloth } from '@/components/garments/chosen-cloth';
import { type FormState, mistaken, refused, taken } from '@/components/ui/form-state';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { removeGarment, restyleGarment, setCounts } from '@/lib/domain/layout/garment-edits';
import { garmentOf, keyOf, offeredSizes, sameSize } from '@/lib/domain/layout/sizes';
import { translatorFor } from '@/lib/messages/translator';
import { reopenJob } from '@/lib/server/answers/reopen-job';
import { requireShop } from '@/lib/server/shop/read-shop';
import { readCounts } from './counts-form';
import { editGarments, editingGarment } from './edit-garments';
import { styleSchema } from './garment-forms';
import { loadClothOffer } from './garment-on-job';
import { addingGarment, readNewGarment } from './new-garment';

/** Adds a garment and leads to it. */
export async function addGarmentAction(jobId: string, _before: FormState, sent: FormData): Promise<FormState> {
  const maker = await requireMaker();
  const { locale, unit } = await requireShop();
  const read = await readNewGarment(maker, locale, sent);
  if (!read.ok) return read.state;
  const edited = await editGarments(maker, { jobId, unit }, addingGarment(read.garment));
  if (!edited.ok) return refused(read.typed, edited.reason, edited.detail);
  refresh();
  redirect(`/jobs/${jobId}#garment-${read.garment.garmentId}`);
}

/** Keeps how many of each size of a garment are ordered. */
export async function countsAction(
  jobId: string,
  garmentId: string,
  _before: FormState,
  sent: FormData,
): Promise<FormState> {
  const maker = await requireMaker();
  const { unit } = await requireShop();
  const { typed, mistakes, counts } = readCounts(sent);
  if (Object.keys(mistakes).length > 0) return mistaken(typed, mistakes);
  const count = editingGarment(garmentId, (layout) => {
    // The page may have been open since before anybody was on the list.
    if (layout.people.lines.length > 0) return { ok: false as const, reason: 'countsFollowList' as const };
    const offered = offeredSizes(garmentOf(layout, garmentId)).map(keyOf);
    const known = counts.filter((count) => offered.some((key) => sameSize(key, count)));
    return setCounts(layout, garmentId, known);
  });
  const edited = await editGarments(maker, { jobId, unit }, count);
  if (!edited.ok) return refused(typed, edited.reason);
  refresh();
  return taken(typed);
}

/** Keeps a garment's name and cloth. */
export async function styleAction(
  jobId: string,
  garmentId: string,
  _before: FormState,
  sent: FormData,
): Promise<FormState> {
  const maker = await requireMaker();
  const { locale, unit } = await requireShop();
  const offer = await loadClothOffer(maker, jobId, garmentId);
  if (!offer) return refused(typedIn(sent), 'noGarment');
  const form = readForm(styleSchema(offer), sent);
  if (!form.ok) return form.state;
  const { name, ...fields } = form.value;
  const cloth = chosenCloth(translatorFor(locale, 'garments'), fields, offer);
  if (!cloth) throw new Error(`a cloth that was read cannot be taken: ${JSON.stringify(fields)}`);
  const restyle = editingGarment(garmentId, (layout) => restyleGarment(layout, garmentId, { name, cloth }));
  const edited = await editGarments(maker, { jobId, unit }, restyle);
  if (!edited.ok) return refused(form.typed, edited.reason);
  refresh();
  return taken(form.typed);
}

/** Removes a garment with the prints that are on no other. */
export async function removeGarmentAction(jobId: string, garmentId: string): Promise<FormState> {
  const maker = await requireMaker();
  const { unit } = await requireShop();
  const remove = (layout: LayoutDocument) => ({ ok: true as const, layout: removeGarment(layout, garmentId) });
  const edited = await editGarments(maker, { jobId, unit }, remove);
  if (!edited.ok) return refused({}, edited.reason);
  refresh();
  redirect(`/jobs/${jobId}#garments`);
}

const reopenSchema = z.object({ reason: z.string().trim().min(1, 'required').max(400, 'tooLong') });

/** Opens a signed-off job for changes. */
export async function reopenAction(jobId: string, _before: FormState, sent: FormData): Promise<FormState> {
  const maker = await requireMaker();
  const form = readForm(reopenSchema, sent);
  if (!form.ok) return form.state;
  const opened = await reopenJob(maker, jobId, form.value.reason);
  if (!opened.ok) return refused(form.typed, opened.reason === 'reasonMissing' ? 'notSignedOff' : opened.reason);
  redirect(`/jobs/${jobId}`);
}
