'use server';

import { refresh } from 'next/cache';
import { z } from 'zod';
import { requireMaker } from '@/app/maker';
import { typedIn } from '@/app/read-form';
import { type FormState, refused, taken } from '@/components/ui/form-state';
import { FLAT_POINTS } from '@/lib/domain/garment/flat';
import { removePhotograph, setPhotograph } from '@/lib/server/blanks/photographs';

const px = z
  .string()
  .trim()
  .regex(/^\d{1,5}$/)
  .transform(Number);
const place = z.enum(FLAT_POINTS);
const settingSchema = z.object({
  places: z
    .string()
    .transform((text) => text.split(' '))
    .pipe(z.tuple([place, place])),
  aX: px,
  aY: px,
  bX: px,
  bY: px,
});
const checkSchema = z.object({ cX: px, cY: px, dX: px, dY: px });

/** Keeps the two points of a photograph, and the width it was checked by. */
export async function setPhotographAction(
  blankId: string,
  photographId: string,
  _before: FormState,
  sent: FormData,
): Promise<FormState> {
  const maker = await requireMaker();
  const typed = typedIn(sent);
  const read = settingSchema.safeParse(typed);
  const check = 'cX' in typed ? checkSchema.safeParse(typed) : null;
  if (!read.success || check?.success === false) return refused(typed, 'number');
  const { places, aX, aY, bX, bY } = read.data;
  const set = await setPhotograph(maker, blankId, photographId, {
    places,
    points: [
      { x: aX, y: aY },
      { x: bX, y: bY },
    ],
    check: check
      ? [
          { x: check.data.cX, y: check.data.cY },
          { x: check.data.dX, y: check.data.dY },
        ]
      : null,
  });
  if (!set.ok) return refused(typed, set.reason);
  refresh();
  return taken(typed);
}

/** Takes a photograph off the list; what was made with it keeps it. */
export async function removePhotographAction(blankId: string, photographId: string): Promise<void> {
  const maker = await requireMaker();
  await removePhotograph(maker, blankId, photographId);
  refresh();
}
