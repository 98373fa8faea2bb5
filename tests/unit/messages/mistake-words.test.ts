import { describe, expect, it } from 'vitest';
import { mistakeWords } from '@/lib/messages/mistake-words';
import { translatorFor } from '@/lib/messages/translator';
import { newJobSchema } from '@/lib/server/jobs/new-job';

const general = translatorFor('en', 'form');
const job = translatorFor('en', 'jobs.form');

describe('a refused field', () => {
  it('has a sentence of its own where the form gives one, and the common one otherwise', () => {
    expect(mistakeWords(job, general, 'title', 'required')).toBe(job('mistake.title.required'));
    expect(mistakeWords(job, general, 'notes', 'tooLong')).toBe(general('mistake.tooLong'));
  });

  it('throws on a code nobody has words for', () => {
    expect(() => mistakeWords(job, general, 'title', 'purple')).toThrow(/purple in title/);
  });

  it('has words for every refusal of a new job', () => {
    const refused = newJobSchema.safeParse({
      customerName: ' ',
      customerEmail: 'nobody',
      customerPhone: '5'.repeat(90),
      title: '',
      neededBy: '2026-02-30T12:00',
      notes: '',
    });
    const issues = refused.error?.issues ?? [];
    expect(issues.map(({ path }) => path[0]).sort()).toEqual([
      'customerEmail',
      'customerName',
      'customerPhone',
      'neededBy',
      'title',
    ]);
    for (const { path, message } of issues) expect(mistakeWords(job, general, String(path[0]), message)).toMatch(/\.$/);
  });
});
