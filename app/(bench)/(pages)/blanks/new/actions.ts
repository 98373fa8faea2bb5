'use server';

import { redirect } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { readForm } from '@/app/read-form';
import { readChart, rowsOfFields } from '@/components/blanks/chart-fields';
import { type FormState, mistaken, refused } from '@/components/ui/form-state';
import { USUAL_CUT_TOLERANCE } from '@/lib/domain/garment/starter-charts';
import { addBlank } from '@/lib/server/blanks/add-blank';
import { requireShop } from '@/lib/server/shop/read-shop';
import { newBlankSchema } from '../blank-forms';

/** Puts a blank on the list and leads to its page. */
export async function newBlankAction(_before: FormState, sent: FormData): Promise<FormState> {
  const maker = await requireMaker();
  const shop = await requireShop();
  const form = readForm(newBlankSchema, sent);
  const typed = form.ok ? form.typed : form.state.typed;
  const kind = newBlankSchema.shape.kind.safeParse(typed.kind);
  const chart = readChart(rowsOfFields(typed) ?? [], kind.data ?? 'crewTee', shop);
  const wrong = Object.fromEntries(chart.mistakes.map(({ field, code }) => [field, code]));
  if (!form.ok) return mistaken(typed, { ...form.state.mistakes, ...wrong });
  if (chart.mistakes.length > 0) return mistaken(typed, wrong);
  const made = await addBlank(maker, {
    ...form.value,
    supplierNote: '',
    cutToleranceUm: { ...USUAL_CUT_TOLERANCE },
    sizes: chart.sizes,
    colours: [],
  });
  if (!made.ok) return refused(typed, made.reason);
  redirect(`/blanks/${made.blankId}`);
}
