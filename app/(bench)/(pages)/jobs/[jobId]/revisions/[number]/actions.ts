'use server';

import { DateTime } from 'luxon';
import { refresh } from 'next/cache';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import { requireMaker } from '@/app/maker';
import { readForm } from '@/app/read-form';
import { RECORDED_ROUTES } from '@/components/send/recorded-routes';
import { type FormState, mistaken, refused } from '@/components/ui/form-state';
import { LONGEST_CHANGE, LONGEST_SIGNED_NAME } from '@/lib/domain/revision/answer';
import { recordAnswer } from '@/lib/server/answers/answers';
import { instantOf } from '@/lib/server/jobs/new-job';

const recordSchema = z.object({
  idempotencyKey: z.uuid(),
  word: z.enum(['yes', 'change'], 'required'),
  how: z.enum(RECORDED_ROUTES, 'required'),
  contactId: z.string().min(1, 'required'),
  typedName: z.string().trim().min(1, 'required').max(LONGEST_SIGNED_NAME, 'tooLong'),
  saidAt: z.string().refine((text) => DateTime.fromISO(text).isValid, 'dateTime'),
  words: z.string().trim().max(LONGEST_CHANGE, 'tooLong'),
});

/** Records what somebody said by text, by phone or across the counter, on the clock of the job's `zone`. */
export async function recordAction(
  jobId: string,
  number: number,
  zone: string,
  _before: FormState,
  sent: FormData,
): Promise<FormState> {
  const maker = await requireMaker();
  const form = readForm(recordSchema, sent);
  if (!form.ok) return form.state;
  const { saidAt: local, ...answer } = form.value;
  const saidAt = instantOf(local, zone);
  if (saidAt > new Date()) return mistaken(form.typed, { saidAt: 'future' });
  if (answer.word === 'change' && answer.words === '') return mistaken(form.typed, { words: 'required' });
  const recorded = await recordAnswer(maker, jobId, { ...answer, number, saidAt });
  if (!recorded.ok) return refused(form.typed, recorded.reason);
  refresh();
  redirect(`/jobs/${jobId}/revisions/${number}#answers`);
}
