/** What came of sending a form. The page shows it again with everything that was typed. */
export type FormState = {
  /** What was typed, by field name; passwords are left out. */
  readonly typed: Readonly<Record<string, string>>;
  /** A code for each field that was refused, by field name. */
  readonly mistakes: Readonly<Record<string, string>>;
  /** A code for a refusal that belongs to no field, or null. */
  readonly refusal: string | null;
  /** What the words for the refusal need to know, by the name they know it under. */
  readonly detail?: Readonly<Record<string, string | number>>;
  /** Whether it was taken, where the page stays. */
  readonly done: boolean;
};

/** The server's side of a form: takes what was sent, answers with what came of it. */
export type FormAction = (before: FormState, sent: FormData) => Promise<FormState>;

/** A form nobody has sent yet. */
export function unsent(typed: Readonly<Record<string, string>> = {}): FormState {
  return { typed, mistakes: {}, refusal: null, done: false };
}

/** What came of a form that was refused as a whole. */
export function refused(
  typed: Readonly<Record<string, string>>,
  refusal: string,
  detail?: Readonly<Record<string, string | number>>,
): FormState {
  return { typed, mistakes: {}, refusal, detail, done: false };
}

/** What came of a form that was taken while its page stays. */
export function taken(typed: Readonly<Record<string, string>>): FormState {
  return { typed, mistakes: {}, refusal: null, done: true };
}

/** What came of a form some of whose fields were refused, each with a code. */
export function mistaken(
  typed: Readonly<Record<string, string>>,
  mistakes: Readonly<Record<string, string>>,
): FormState {
  return { typed, mistakes, refusal: null, done: false };
}
