'use server';

import { refresh } from 'next/cache';
import { requireMaker } from '@/app/maker';
import { type FormState, refused, taken } from '@/components/ui/form-state';
import { withdrawFont } from '@/lib/server/fonts/list-fonts';

/** Stops offering a font of the shop's own for new lettering. */
export async function withdrawAction(sha256: string, _before: FormState, _sent: FormData): Promise<FormState> {
  const maker = await requireMaker();
  const { ok } = await withdrawFont(maker, sha256);
  refresh();
  return ok ? taken({}) : refused({}, 'gone');
}
