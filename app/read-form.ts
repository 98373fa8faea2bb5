import type { z } from 'zod';
import { type FormState, mistaken } from '@/components/ui/form-state';

/** Names that are never sent back to the page. */
const SECRET_FIELDS = new Set(['password']);

/** Every text a form was sent with, by field name; passwords and the framework's own fields left out. */
export function typedIn(sent: FormData): Record<string, string> {
  return Object.fromEntries(
    [...sent].filter(
      (entry): entry is [string, string] =>
        typeof entry[1] === 'string' && !entry[0].startsWith('$ACTION') && !SECRET_FIELDS.has(entry[0]),
    ),
  );
}

/**
 * Reads a form by its schema: its values, or the form again with a code for each field that was refused. The codes are
 * the schema's own messages where they are one word, otherwise `required`, `tooLong` or `invalid`.
 */
export function readForm<Schema extends z.ZodType>(
  schema: Schema,
  sent: FormData,
): { ok: true; value: z.output<Schema>; typed: Record<string, string> } | { ok: false; state: FormState } {
  const typed = typedIn(sent);
  const read = schema.safeParse(Object.fromEntries(sent));
  if (read.success) return { ok: true, value: read.data, typed };
  const mistakes: Record<string, string> = {};
  for (const issue of read.error.issues) mistakes[String(issue.path[0] ?? '')] ??= codeOf(issue);
  return { ok: false, state: mistaken(typed, mistakes) };
}

function codeOf({ code, message }: z.core.$ZodIssue): string {
  if (/^[a-z][a-zA-Z]+$/.test(message)) return message;
  if (code === 'too_big') return 'tooLong';
  return code === 'too_small' || code === 'invalid_type' ? 'required' : 'invalid';
}
