import type { LayoutDocument, Print } from './document';
import { letteringOf, letteringPrints } from './print-content';
import type { TypeCase } from './type-case';

/** Characters of a print that no font has, each once, and whose words they are in (`null`: fixed words, or samples). */
export type UnprintableLetters = {
  readonly print: Print;
  readonly characters: readonly string[];
  readonly personIds: readonly (string | null)[];
};

/**
 * The lettering that cannot be printed: some character of somebody's words is in no font at hand. It stops a revision, since
 * nothing would be printed in its place. Everybody on the list is looked at; samples only while the list is empty.
 */
export function unprintableLetters(
  layout: Pick<LayoutDocument, 'prints' | 'people'>,
  type: TypeCase | null,
): UnprintableLetters[] {
  if (!type) return [];
  return letteringPrints(layout).flatMap((print) => {
    const lettering = letteringOf(print);
    if (!lettering) return [];
    const everybody = type.isPersonal(lettering) && layout.people.lines.length > 0;
    const ids = everybody ? layout.people.lines.map(({ personId }) => personId) : [null];
    const lacking = ids
      .map((personId) => ({ personId, missing: type.textOf(lettering, personId).missing }))
      .filter(({ missing }) => missing.length > 0);
    if (lacking.length === 0) return [];
    const characters = [...new Set(lacking.flatMap(({ missing }) => missing))];
    return [{ print, characters, personIds: lacking.map(({ personId }) => personId) }];
  });
}
