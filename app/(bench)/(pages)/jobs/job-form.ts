import type { NewJob } from '@/lib/server/jobs/new-job';

/** A job's own words as the fields of its form begin with them. */
export function jobFields(job: NewJob): Record<keyof NewJob, string> {
  return { ...job, customerEmail: job.customerEmail ?? '', customerPhone: job.customerPhone ?? '' };
}
