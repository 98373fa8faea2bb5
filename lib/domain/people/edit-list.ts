import { cleanField } from './clean-field';
import { itemsContent, lineContent } from './line-content';
import type { ListLine, ListSettings, Meant, PeopleList } from './list';
import type { EditRefusal, ListEdit } from './list-edit';
import { type Column, MOST_PEOPLE } from './person';

/** A list after a change, with the changes that take it back; or why the change cannot be made. */
export type EditedList =
  | { readonly ok: true; readonly list: PeopleList; readonly inverse: readonly ListEdit[] }
  | { readonly ok: false; readonly reason: EditRefusal };

/** Who edits, and when; and which columns lettering prints, so that none of them goes. */
export type EditedBy = { readonly by: string; readonly at: string; readonly letteredColumnIds: readonly string[] };

/**
 * The list with one change made. A cell somebody else changed in the meantime is left as they wrote it. Lines that do not
 * change stay the same objects; versions are those of `list`.
 */
export function editList(list: PeopleList, edit: ListEdit, by: EditedBy): EditedList {
  switch (edit.edit) {
    case 'add':
      return addLine(list, edit);
    case 'remove':
      return removeLine(list, edit);
    case 'field':
      return editLine(list, edit.personId, (line) => fieldEdited(line, edit));
    case 'items':
      return editLine(list, edit.personId, (line) => itemsEdited(line, edit));
    case 'confirm':
      return editLine(list, edit.personId, (line) => confirmed(line, edit, by));
    case 'meant':
      return edit.personId === null
        ? meantOfList(list, edit.meant)
        : editLine(list, edit.personId, (line) => meantOfLine(line, edit.meant));
    case 'columns':
      return columnsEdited(list, edit, by);
    case 'settings':
      return settingsEdited(list, edit.settings);
    case 'spare':
      return spareEdited(list, edit);
  }
}

/** The list with several changes made one after the other; those that cannot be are left out and named by their place. */
export function editListInTurn(
  list: PeopleList,
  edits: readonly ListEdit[],
  by: EditedBy,
): { list: PeopleList; inverse: ListEdit[]; refused: { at: number; reason: EditRefusal }[] } {
  let now = list;
  const inverses: (readonly ListEdit[])[] = [];
  const refused: { at: number; reason: EditRefusal }[] = [];
  for (const [at, edit] of edits.entries()) {
    const edited = editList(now, edit, by);
    if (!edited.ok) {
      refused.push({ at, reason: edited.reason });
      continue;
    }
    now = edited.list;
    inverses.push(edited.inverse);
  }
  return { list: now, inverse: inverses.toReversed().flat(), refused };
}

type Edit<Kind extends ListEdit['edit']> = Extract<ListEdit, { edit: Kind }>;
type EditedLine = { ok: true; line: ListLine; inverse: ListEdit[] } | { ok: false; reason: EditRefusal };

function editLine(list: PeopleList, personId: string, edit: (line: ListLine) => EditedLine): EditedList {
  const at = list.lines.findIndex((line) => line.personId === personId);
  const before = list.lines[at];
  if (!before) return { ok: false, reason: 'gone' };
  const edited = edit(before);
  if (!edited.ok) return edited;
  return { ok: true, list: { ...list, lines: list.lines.with(at, edited.line) }, inverse: edited.inverse };
}

function addLine(list: PeopleList, { line, before }: Edit<'add'>): EditedList {
  if (list.lines.some(({ personId }) => personId === line.personId)) return { ok: false, reason: 'alreadyThere' };
  if (list.lines.length >= MOST_PEOPLE) return { ok: false, reason: 'tooMany' };
  const known = list.lines.findIndex(({ personId }) => personId === before);
  const at = known < 0 ? list.lines.length : known;
  const fields = Object.fromEntries(Object.entries(line.fields).map(([id, text]) => [id, cleanField(text)]));
  const added: ListLine = { ...line, fields, version: 1, confirmed: null };
  const lines = [...list.lines];
  lines.splice(at, 0, added);
  const inverse: ListEdit[] = [{ edit: 'remove', personId: line.personId, seen: lineContent(added) }];
  return { ok: true, list: { ...list, lines }, inverse };
}

function removeLine(list: PeopleList, { personId, seen }: Edit<'remove'>): EditedList {
  const at = list.lines.findIndex((line) => line.personId === personId);
  const line = list.lines[at];
  if (!line) return { ok: false, reason: 'gone' };
  if (lineContent(line) !== seen) return { ok: false, reason: 'changedElsewhere' };
  const { fields, items, meant } = line;
  const before = list.lines[at + 1]?.personId ?? null;
  return {
    ok: true,
    list: { ...list, lines: list.lines.toSpliced(at, 1) },
    inverse: [{ edit: 'add', line: { personId, fields, items, meant }, before }],
  };
}

function fieldEdited(line: ListLine, { personId, columnId, was, text }: Edit<'field'>): EditedLine {
  const now = line.fields[columnId] ?? '';
  const next = cleanField(text);
  if (now !== was && now !== next) return { ok: false, reason: 'changedElsewhere' };
  const inverse: ListEdit = { edit: 'field', personId, columnId, was: next, text: now };
  return {
    ok: true,
    line: { ...line, fields: { ...line.fields, [columnId]: next }, confirmed: null },
    inverse: [inverse],
  };
}

function itemsEdited(line: ListLine, { personId, garmentId, was, items }: Edit<'items'>): EditedLine {
  const now = line.items.filter((item) => item.garmentId === garmentId);
  const next = items.filter((item) => item.garmentId === garmentId);
  const isAsWas = itemsContent(now) === itemsContent(was) || itemsContent(now) === itemsContent(next);
  if (!isAsWas) return { ok: false, reason: 'changedElsewhere' };
  const others = line.items.filter((item) => item.garmentId !== garmentId);
  const inverse: ListEdit = { edit: 'items', personId, garmentId, was: next, items: now };
  return { ok: true, line: { ...line, items: [...others, ...next], confirmed: null }, inverse: [inverse] };
}

function confirmed(line: ListLine, edit: Edit<'confirm'>, { by, at }: EditedBy): EditedLine {
  if (lineContent(line) !== edit.seen) return { ok: false, reason: 'changedElsewhere' };
  const inverse: ListEdit = { ...edit, confirmed: line.confirmed !== null };
  return { ok: true, line: { ...line, confirmed: edit.confirmed ? { by, at } : null }, inverse: [inverse] };
}

function meantOfLine(line: ListLine, meant: Edit<'meant'>['meant']): EditedLine {
  const { all, inverse } = withMeant(line.meant, meant);
  return {
    ok: true,
    line: { ...line, meant: all },
    inverse: [{ edit: 'meant', personId: line.personId, meant: inverse }],
  };
}

function meantOfList(list: PeopleList, meant: Edit<'meant'>['meant']): EditedList {
  const { all, inverse } = withMeant(list.settings.meant, meant);
  const settings = { ...list.settings, meant: all };
  return { ok: true, list: { ...list, settings }, inverse: [{ edit: 'meant', personId: null, meant: inverse }] };
}

function withMeant(before: readonly Meant[], { why, ...what }: Edit<'meant'>['meant']) {
  const isSame = ({ code, place, about }: Meant) => code === what.code && place === what.place && about === what.about;
  const others = before.filter((each) => !isSame(each));
  const said = why?.trim() ?? '';
  const all: Meant[] = said === '' ? others : [...others, { ...what, why: said }];
  return { all, inverse: { ...what, why: before.find(isSame)?.why ?? null } };
}

function columnsEdited(list: PeopleList, { was, columns }: Edit<'columns'>, by: EditedBy): EditedList {
  if (JSON.stringify(list.columns) !== JSON.stringify(was)) return { ok: false, reason: 'changedElsewhere' };
  const ids = columns.map(({ columnId }) => columnId);
  if (columns.length === 0 || new Set(ids).size !== ids.length) return { ok: false, reason: 'badColumns' };
  const gone = list.columns.map(({ columnId }) => columnId).filter((columnId) => !ids.includes(columnId));
  if (gone.some((columnId) => by.letteredColumnIds.includes(columnId))) return { ok: false, reason: 'lettered' };
  const refilled: ListEdit[] = [];
  const lines = list.lines.map((line) => {
    const filled = gone.filter((columnId) => (line.fields[columnId] ?? '') !== '');
    if (filled.length === 0) return line;
    const { personId } = line;
    for (const columnId of filled) {
      refilled.push({ edit: 'field', personId, columnId, was: '', text: line.fields[columnId] ?? '' });
    }
    const fields = Object.fromEntries(Object.entries(line.fields).filter(([columnId]) => !gone.includes(columnId)));
    return { ...line, fields };
  });
  const inverse: ListEdit[] = [{ edit: 'columns', was: columns, columns: [...list.columns] }, ...refilled];
  return { ok: true, list: { ...list, columns: columns as Column[], lines }, inverse };
}

function settingsEdited(list: PeopleList, changed: Edit<'settings'>['settings']): EditedList {
  const { numberOnceWithin, confirmEach } = list.settings;
  return {
    ok: true,
    list: { ...list, settings: { ...list.settings, ...changed } },
    inverse: [{ edit: 'settings', settings: { numberOnceWithin, confirmEach } }],
  };
}

function spareEdited(list: PeopleList, { quantity, edit: _edit, ...key }: Edit<'spare'>): EditedList {
  const isSame = (each: ListSettings['spares'][number]) =>
    each.garmentId === key.garmentId && each.blankId === key.blankId && each.sizeId === key.sizeId;
  const { spares } = list.settings;
  const others = spares.filter((each) => !isSame(each));
  const next = quantity === 0 ? others : [...others, { ...key, quantity }];
  return {
    ok: true,
    list: { ...list, settings: { ...list.settings, spares: next } },
    inverse: [{ edit: 'spare', ...key, quantity: spares.find(isSame)?.quantity ?? 0 }],
  };
}
