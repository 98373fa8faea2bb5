import { SIDES, type Side } from '../garment/flat';
import type { LayoutDocument } from '../layout/document';
import { letteringOf } from '../layout/print-content';
import { composeScene, type SceneKey } from '../layout/scene';
import type { TypeCase } from '../layout/type-case';
import { fieldsIn } from '../lettering/lettering-text';
import type { Person } from '../people/person';
import { canonicalBytes, type JsonValue, sha256Hex } from './canonical';
import { type FrozenScene, sceneKeyText } from './frozen-scenes';

/** A drawing of what one person gets, as a revision keeps it. */
export type PersonalScene = FrozenScene & { readonly key: SceneKey & { readonly lineId: string } };

/** One garment of a line, in one size: several lines of an order for the same are one. */
export type PersonalGarment = Pick<Person['items'][number], 'garmentId' | 'blankId' | 'sizeId' | 'quantity'>;

/**
 * The drawings that differ by person: each side with somebody's words on it, of each garment they get. They lie beside the
 * drawings with samples, without tapes, which say the same for everybody. `saltOf` gives random text for each, so that a hash
 * tells nothing about a name. Empty where no lettering takes its words from the list.
 */
export function personalScenes(
  layout: LayoutDocument,
  type: TypeCase | null,
  saltOf: (keyText: string) => string,
): PersonalScene[] {
  if (!type) return [];
  return layout.people.lines.flatMap((person) =>
    garmentsOfPerson(person).flatMap(({ garmentId, blankId, sizeId }) =>
      personalSides(layout, garmentId).map((side): PersonalScene => {
        const key = { garmentId, size: { blankId, sizeId }, side, lineId: person.personId };
        const keyText = sceneKeyText(key);
        const scene = { ...composeScene(layout, key, type.of(person.personId)), salt: saltOf(keyText) };
        const bytes = canonicalBytes(scene as unknown as JsonValue);
        return { key, keyText, scene, bytes, sha256: sha256Hex(bytes) };
      }),
    ),
  );
}

/** What somebody gets, in the order it is written, the same garment in the same size taken together. */
export function garmentsOfPerson({ items }: Pick<Person, 'items'>): PersonalGarment[] {
  const gets = new Map<string, PersonalGarment>();
  for (const { garmentId, blankId, sizeId, quantity } of items) {
    const key = [garmentId, blankId, sizeId].join('/');
    gets.set(key, { garmentId, blankId, sizeId, quantity: quantity + (gets.get(key)?.quantity ?? 0) });
  }
  return [...gets.values()];
}

/** Whether a print says something else for each person. */
export function isPersonal(print: Pick<LayoutDocument['prints'][number], 'content'>): boolean {
  return fieldsIn(letteringOf(print)?.lines ?? []).length > 0;
}

function personalSides({ prints }: LayoutDocument, garmentId: string): Side[] {
  const sides = prints.filter((print) => isPersonal(print) && print.garmentIds.includes(garmentId));
  return SIDES.filter((side) => sides.some((print) => print.side === side));
}
