'use server';

import { refresh } from 'next/cache';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import { requireMaker } from '@/app/maker';
import { readForm, typedIn } from '@/app/read-form';
import { readChart, rowsOfFields } from '@/components/blanks/chart-fields';
import { readColours, rowsOfColourFields } from '@/components/blanks/colour-fields';
import { type FormState, mistaken, refused, taken } from '@/components/ui/form-state';
import { CHART_SOURCES } from '@/lib/domain/garment/blank-style';
import { translatorFor } from '@/lib/messages/translator';
import { duplicateBlank } from '@/lib/server/blanks/add-blank';
import { archiveBlank } from '@/lib/server/blanks/edit-blank';
import { loadBlank } from '@/lib/server/blanks/load-blank';
import { setOnHand } from '@/lib/server/blanks/set-on-hand';
import { requireShop } from '@/lib/server/shop/read-shop';
import { factsSchema, seenSchema } from '../blank-forms';
import { keepEdit } from './keep-edit';
import { meanwhileState, readOnHand } from './on-hand-counts';

/** Keeps a blank's name, fabric, age band, cut tolerance and note. */
export async function factsAction(blankId: string, _before: FormState, sent: FormData): Promise<FormState> {
  const maker = await requireMaker();
  const [shop, blank] = await Promise.all([requireShop(), loadBlank(maker, blankId)]);
  if (!blank) return refused(typedIn(sent), 'noBlank');
  const form = readForm(factsSchema(shop.unit, blank.style).extend(seenSchema.shape), sent);
  if (!form.ok) return form.state;
  const { seen, acrossTolerance, longTolerance, ...facts } = form.value;
  const cutToleranceUm = { acrossUm: acrossTolerance, longUm: longTolerance };
  return keepEdit(maker, blankId, seen, form.typed, (style) => ({ ...style, ...facts, cutToleranceUm }));
}

const chartSchema = seenSchema.extend({ chartSource: z.enum(CHART_SOURCES) });

/** Keeps a blank's size chart. */
export async function chartAction(blankId: string, _before: FormState, sent: FormData): Promise<FormState> {
  const maker = await requireMaker();
  const [shop, blank] = await Promise.all([requireShop(), loadBlank(maker, blankId)]);
  const form = readForm(chartSchema, sent);
  if (!form.ok) return form.state;
  if (!blank) return refused(form.typed, 'noBlank');
  const { sizes, mistakes } = readChart(rowsOfFields(form.typed) ?? [], blank.style.kind, shop);
  if (mistakes.length > 0) {
    return mistaken(form.typed, Object.fromEntries(mistakes.map(({ field, code }) => [field, code])));
  }
  const { seen, chartSource } = form.value;
  return keepEdit(maker, blankId, seen, form.typed, (style) => ({ ...style, sizes, chartSource }));
}

/** Keeps the colours of a blank. */
export async function coloursAction(blankId: string, _before: FormState, sent: FormData): Promise<FormState> {
  const maker = await requireMaker();
  const form = readForm(seenSchema, sent);
  if (!form.ok) return form.state;
  const { colours, mistakes } = readColours(rowsOfColourFields(form.typed) ?? []);
  if (Object.keys(mistakes).length > 0) return mistaken(form.typed, mistakes);
  return keepEdit(maker, blankId, form.value.seen, form.typed, (style) => ({ ...style, colours }));
}

/** Keeps what was counted on the shelf. */
export async function onHandAction(blankId: string, _before: FormState, sent: FormData): Promise<FormState> {
  const maker = await requireMaker();
  const typed = typedIn(sent);
  const { counts, mistakes } = readOnHand(typed);
  if (Object.keys(mistakes).length > 0) return mistaken(typed, mistakes);
  const kept = await setOnHand(maker, blankId, counts);
  if (!kept.ok)
    return kept.reason === 'countedMeanwhile' ? meanwhileState(typed, kept.now) : refused(typed, kept.reason);
  refresh();
  return taken(typed);
}

/** Copies a blank and leads to the copy. */
export async function duplicateAction(blankId: string): Promise<FormState> {
  const maker = await requireMaker();
  const [shop, blank] = await Promise.all([requireShop(), loadBlank(maker, blankId)]);
  if (!blank) return refused({}, 'noBlank');
  const t = translatorFor(shop.locale, 'blanks.other');
  const copied = await duplicateBlank(maker, blankId, t('copyName', { name: blank.style.name }).slice(0, 80));
  if (!copied.ok) return refused({}, copied.reason);
  redirect(`/blanks/${copied.blankId}`);
}

/** Puts a blank away and leads to the list, or brings it back. */
export async function archiveAction(blankId: string, archived: boolean): Promise<FormState> {
  const maker = await requireMaker();
  const done = await archiveBlank(maker, blankId, archived);
  if (!done.ok) return refused({}, done.reason);
  refresh();
  if (archived) redirect('/blanks');
  return taken({});
}
