/** Any translator, as far as a key made from a field's name and a code goes. */
export type KeyedTranslator = { (key: never): string; readonly has: (key: never) => boolean };

/**
 * What is wrong with a field, in one sentence: the form's own words for it (`mistake.title.required`), or the general
 * ones of the `form` subject (`mistake.required`). Throws for a code that neither knows.
 */
export function mistakeWords(form: KeyedTranslator, general: KeyedTranslator, field: string, code: string): string {
  const own = `mistake.${field}.${code}` as never;
  if (form.has(own)) return form(own);
  const common = `mistake.${code}` as never;
  if (general.has(common)) return general(common);
  throw new Error(`no words for the mistake ${code} in ${field}`);
}
