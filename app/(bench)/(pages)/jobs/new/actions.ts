'use server';

import { redirect } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { readForm } from '@/app/read-form';
import type { FormState } from '@/components/ui/form-state';
import { createJob } from '@/lib/server/jobs/create-job';
import { newJobSchema } from '@/lib/server/jobs/new-job';

/** Makes a job and leads to its page. */
export async function newJobAction(_before: FormState, sent: FormData): Promise<FormState> {
  const maker = await requireMaker();
  const form = readForm(newJobSchema, sent);
  if (!form.ok) return form.state;
  const { jobId } = await createJob(maker, form.value);
  redirect(`/jobs/${jobId}`);
}
