'use server';

import { refresh } from 'next/cache';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import { requireMaker } from '@/app/maker';
import { readForm } from '@/app/read-form';
import { MOST_GARMENTS } from '@/components/garments/refusal-words';
import { type FormState, mistaken, refused, taken } from '@/components/ui/form-state';
import { addGarment, removeGarment, restyleGarment, setCounts } from '@/lib/domain/layout/garment-edits';
import { garmentOf, keyOf, offeredSizes, sameSize } from '@/lib/domain/layout/sizes';
import { translatorFor } from '@/lib/messages/translator';
import { reopenJob } from '@/lib/server/answers/reopen-job';
import { requireShop } from '@/lib/server/shop/read-shop';
import { readCounts } from './counts-form';
import { editGarments, hasGarment } from './edit-garments';
import { chosenCloth, newGarmentSchema, styleSchema } from './garment-forms';
import { newGarment } from './new-garment';

/** Adds a garment and leads to it. */
export async function addGarmentAction(jobId: string, _before: FormState, sent: FormData): Promise<FormState> {
  const maker = await requireMaker();
  const form = readForm(newGarmentSchema, sent);
  if (!form.ok) return form.state;
  const t = translatorFor((await requireShop()).locale, 'garments');
  const { name, fabric, adult, youth, ...cloth } = form.value;
  const bands = [...(youth ? (['youth'] as const) : []), ...(adult ? (['adult'] as const) : [])];
  const garment = newGarment(t, { name, fabric, bands, cloth: chosenCloth(t, cloth) });
  const edited = await editGarments(maker, jobId, (layout) =>
    layout.garments.length >= MOST_GARMENTS ? 'tooMany' : addGarment(layout, garment),
  );
  if (!edited.ok) return refused(form.typed, edited.reason);
  refresh();
  redirect(`/jobs/${jobId}#garment-${garment.garmentId}`);
}

/** Keeps how many of each size of a garment are ordered. */
export async function countsAction(
  jobId: string,
  garmentId: string,
  _before: FormState,
  sent: FormData,
): Promise<FormState> {
  const maker = await requireMaker();
  const { typed, mistakes, counts } = readCounts(sent);
  if (Object.keys(mistakes).length > 0) return mistaken(typed, mistakes);
  const edited = await editGarments(maker, jobId, (layout) => {
    if (!hasGarment(layout, garmentId)) return 'noGarment';
    const offered = offeredSizes(garmentOf(layout, garmentId)).map(keyOf);
    const known = counts.filter((count) => offered.some((key) => sameSize(key, count)));
    return setCounts(layout, garmentId, known);
  });
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
  const form = readForm(styleSchema, sent);
  if (!form.ok) return form.state;
  const t = translatorFor((await requireShop()).locale, 'garments');
  const { name, ...cloth } = form.value;
  const style = { name, cloth: chosenCloth(t, cloth) };
  const edited = await editGarments(maker, jobId, (layout) =>
    hasGarment(layout, garmentId) ? restyleGarment(layout, garmentId, style) : 'noGarment',
  );
  if (!edited.ok) return refused(form.typed, edited.reason);
  refresh();
  return taken(form.typed);
}

/** Removes a garment with the prints that are on no other. */
export async function removeGarmentAction(jobId: string, garmentId: string): Promise<FormState> {
  const maker = await requireMaker();
  const edited = await editGarments(maker, jobId, (layout) => removeGarment(layout, garmentId));
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
