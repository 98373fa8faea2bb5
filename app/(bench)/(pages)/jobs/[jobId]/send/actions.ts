'use server';

import { refresh } from 'next/cache';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import { requireMaker } from '@/app/maker';
import { readForm } from '@/app/read-form';
import { fitNoteField, printOfField } from '@/components/send/stop-to-explain';
import { type FormState, mistaken, refused } from '@/components/ui/form-state';
import type { FitNotes } from '@/lib/domain/revision/fit-notes';
import { sendRevision } from '@/lib/server/revisions/send-revision';

const LONGEST_NOTE = 2_000;

const sendSchema = z.object({
  draftVersion: z.coerce.number().int().min(1),
  revisionId: z.uuid(),
  note: z.string().trim().max(LONGEST_NOTE, 'tooLong'),
});

/** Seals the working copy as the next revision, sends it, and leads to its page. */
export async function sendAction(jobId: string, _before: FormState, sent: FormData): Promise<FormState> {
  const maker = await requireMaker();
  const form = readForm(sendSchema, sent);
  if (!form.ok) return form.state;
  const result = await sendRevision(maker, jobId, { ...form.value, fitNotes: fitNotesIn(sent) });
  if (result.ok) redirect(`/jobs/${jobId}/revisions/${result.number}`);
  // The page shows what there is now, under the sentence that says why nothing was sent.
  refresh();
  if (result.reason !== 'fitNotesWrong') return refused(form.typed, result.reason);
  const mistakes = Object.entries(result.fitNotes).map(([printId, code]) => [fitNoteField(printId), code]);
  return mistaken(form.typed, Object.fromEntries(mistakes));
}

/** Why prints are meant so, by print id. Lines end in CR LF (HTML, form submission), where the field counted one character. */
function fitNotesIn(sent: FormData): FitNotes {
  return Object.fromEntries(
    [...sent].flatMap(([field, typed]) => {
      const printId = printOfField(field);
      return printId && typeof typed === 'string' ? [[printId, typed.replaceAll('\r\n', '\n')]] : [];
    }),
  );
}
