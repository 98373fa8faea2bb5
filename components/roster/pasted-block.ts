import type { GarmentOnOffer, ListLine, PeopleList } from '@/lib/domain/people/list';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import { blockEdits } from '@/lib/domain/people/paste/paste-block';
import { MOST_PEOPLE } from '@/lib/domain/people/person';
import { madeId } from './made-id';

type PasteAt = { readonly personId: string; readonly place: string };
type PasteInto = {
  readonly list: PeopleList;
  readonly shown: readonly ListLine[];
  readonly places: readonly string[];
  readonly garments: readonly GarmentOnOffer[];
};

/**
 * What writes a pasted block into the table from a cell on; null where it should be looked at first: it does not fit, or
 * several columns of it begin a list of their own.
 */
export function pastedBlock(text: string, { personId, place }: PasteAt, into: PasteInto): ListEdit[] | null {
  const { list, shown, places, garments } = into;
  const at = shown.findIndex((line) => line.personId === personId);
  if (at < 0 && text.includes('\t')) return null;
  const isNew = (id: string) => !list.lines.some((line) => line.personId === id);
  const begun: ListLine = { personId, fields: {}, items: [], meant: [], version: 1, confirmed: null };
  return blockEdits(text, {
    lines: at < 0 ? [begun] : shown.slice(at),
    isNew,
    places: places.slice(places.indexOf(place)),
    garments,
    newId: madeId,
    room: MOST_PEOPLE - list.lines.length,
  });
}
