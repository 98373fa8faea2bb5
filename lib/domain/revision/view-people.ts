import { z } from 'zod';
import { SIDES } from '../garment/flat';
import type { LayoutDocument } from '../layout/document';
import type { PictureFrame } from '../layout/picture-frame';
import { commonBox, flatOf, type Scene, shownSides } from '../layout/scene';
import { garmentOf, sameSize, sizesToShow } from '../layout/sizes';
import { personName } from '../people/person-name';
import { garmentsOfPerson, isPersonal, type PersonalScene } from './personal-scenes';

const count = z.number().int();

/** What is shown of one person: what they are called, what they get, and the words on it as they are set. */
const viewPersonSchema = z.object({
  personId: z.string(),
  /** Null for a line that says nothing. */
  name: z.string().nullable(),
  garments: z.array(
    z.object({
      garmentId: z.string(),
      blankId: z.string(),
      sizeId: z.string(),
      quantity: count,
      /** The sides with words of theirs. */
      sides: z.array(
        z.object({
          side: z.enum(SIDES),
          sceneSha256: z.string(),
          words: z.array(z.object({ print: z.string(), text: z.string() })),
        }),
      ),
    }),
  ),
});
export type ViewPerson = z.infer<typeof viewPersonSchema>;

/** Everyone of a revision, in the order of the list, and how large the pictures of each garment are, px. */
export const viewPeopleSchema = z.object({
  frames: z.array(z.object({ garmentId: z.string(), widthPx: count, heightPx: count })),
  lines: z.array(viewPersonSchema),
});
export type ViewPeople = z.infer<typeof viewPeopleSchema>;

/** Width of a picture on the sheet of everyone, px: shown at half of it, sharp on a phone with two pixels to the CSS pixel. */
const SHEET_WIDTH_PX = 360;

/** Room around the widest garment there, mm. */
const SHEET_MARGIN_MM = 10;

/** The frame that everyone's pictures of one garment share, so that all sizes are at one scale. */
export function personFrame(layout: Pick<LayoutDocument, 'garments' | 'prints'>, garmentId: string): PictureFrame {
  const shown = sizesToShow(garmentOf(layout, garmentId)).flatMap(({ blank, size }) =>
    shownSides(layout, garmentId, blank.kind).map((side) => ({ box: flatOf(blank.kind, size, side).box })),
  );
  const box = commonBox(shown, SHEET_MARGIN_MM);
  return { box, widthPx: SHEET_WIDTH_PX, heightPx: Math.round((SHEET_WIDTH_PX * box.height) / box.width) };
}

/** What is shown of everyone; null where no drawing differs by person. */
export function viewPeople(layout: LayoutDocument, scenes: readonly PersonalScene[]): ViewPeople | null {
  if (scenes.length === 0) return null;
  const personal = new Map(layout.prints.filter(isPersonal).map(({ printId, name }) => [printId, name]));
  return {
    frames: [...new Set(scenes.map(({ key }) => key.garmentId))].map((garmentId) => {
      const { widthPx, heightPx } = personFrame(layout, garmentId);
      return { garmentId, widthPx, heightPx };
    }),
    lines: layout.people.lines.map((person) => ({
      personId: person.personId,
      name: personName(layout.people, person),
      garments: garmentsOfPerson(person).map((garment) => ({
        ...garment,
        sides: scenes
          .filter(({ key: { lineId, garmentId } }) => lineId === person.personId && garmentId === garment.garmentId)
          .filter(({ key: { size } }) => sameSize(size, garment))
          .map(({ key: { side }, sha256, scene }) => ({ side, sceneSha256: sha256, words: wordsOf(scene, personal) })),
      })),
    })),
  };
}

/** The words on a drawing that differ by person, print by print, as they are painted. */
function wordsOf({ shapes }: Scene, personal: ReadonlyMap<string, string>): { print: string; text: string }[] {
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'glyphs' || shape.printId === undefined) return [];
    const print = personal.get(shape.printId);
    return print === undefined ? [] : [{ print, text: shape.text }];
  });
}
