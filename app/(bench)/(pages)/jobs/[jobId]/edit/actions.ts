'use server';

import { redirect } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { readForm } from '@/app/read-form';
import { type FormState, refused } from '@/components/ui/form-state';
import { editJob } from '@/lib/server/jobs/create-job';
import { newJobSchema } from '@/lib/server/jobs/new-job';

/** Keeps a job's changed details and leads back to its page. */
export async function editJobAction(jobId: string, _before: FormState, sent: FormData): Promise<FormState> {
  const maker = await requireMaker();
  const form = readForm(newJobSchema, sent);
  if (!form.ok) return form.state;
  const edited = await editJob(maker, jobId, form.value);
  if (!edited.ok) return refused(form.typed, edited.reason);
  redirect(`/jobs/${jobId}`);
}
