'use server';

import { refresh } from 'next/cache';
import { requireMaker } from '@/app/maker';
import { typedIn } from '@/app/read-form';
import { type FormState, refused, taken } from '@/components/ui/form-state';
import { hangBlank, takeDownBlank } from '@/lib/domain/layout/blank-edits';
import { withPhotographsReset } from '@/lib/domain/layout/photograph-scene';
import { takeChart } from '@/lib/domain/layout/take-chart';
import { photographsFor } from '@/lib/server/blanks/photographs';
import { newId } from '@/lib/server/db/new-id';
import { requireShop } from '@/lib/server/shop/read-shop';
import { blankEdit } from './blank-refusal';
import { editGarments, editingGarment } from './edit-garments';
import { loadShopBlankId } from './garment-on-job';
import { blankOf, blankStyleId, loadStyle } from './style-to-hang';

/** Hangs one more style under a garment. Every print of it gets readings for the new sizes. */
export async function hangBlankAction(
  jobId: string,
  garmentId: string,
  fabric: string,
  _before: FormState,
  sent: FormData,
): Promise<FormState> {
  const maker = await requireMaker();
  const { locale, unit } = await requireShop();
  const typed = typedIn(sent);
  const style = await loadStyle(maker, locale, typed.style ?? '', fabric);
  if (!style) return refused(typed, 'noStyle');
  const made = blankOf(locale, style, newId());
  if (!made.ok) return refused(typed, made.reason, made.detail);
  const hang = editingGarment(garmentId, (layout) =>
    blankEdit(locale, hangBlank(layout, garmentId, made.blank, newId)),
  );
  const edited = await editGarments(maker, { jobId, unit }, hang);
  if (!edited.ok) return refused(typed, edited.reason, edited.detail);
  refresh();
  return taken({});
}

/** Takes a blank down from a garment, with the sizes nobody ordered. */
export async function takeDownBlankAction(jobId: string, garmentId: string, blankId: string): Promise<FormState> {
  const maker = await requireMaker();
  const { locale, unit } = await requireShop();
  const takeDown = editingGarment(garmentId, (layout) => blankEdit(locale, takeDownBlank(layout, garmentId, blankId)));
  const edited = await editGarments(maker, { jobId, unit }, takeDown);
  if (!edited.ok) return refused({}, edited.reason, edited.detail);
  refresh();
  return taken({});
}

/** Draws a garment from the shop's chart of its blank as it is now. */
export async function takeChartAction(jobId: string, garmentId: string, blankId: string): Promise<FormState> {
  const maker = await requireMaker();
  const { locale, unit } = await requireShop();
  const shopBlankId = await loadShopBlankId(maker, jobId, garmentId, blankId);
  const style = shopBlankId === null ? null : await loadStyle(maker, locale, blankStyleId(shopBlankId), '');
  if (!style) return refused({}, 'noStyle');
  const made = blankOf(locale, style, blankId);
  if (!made.ok) return refused({}, made.reason, made.detail);
  const photographs = await photographsFor(maker, [shopBlankId ?? undefined]);
  const take = editingGarment(garmentId, (layout) => {
    const edited = blankEdit(locale, takeChart(layout, garmentId, made.blank, newId));
    return edited.ok
      ? { ok: true, layout: withPhotographsReset(edited.layout, { garmentId, blankId }, photographs) }
      : edited;
  });
  const edited = await editGarments(maker, { jobId, unit }, take);
  if (!edited.ok) return refused({}, edited.reason, edited.detail);
  refresh();
  return taken({});
}
